/** Reads a table that lies beside the page, by its address; hands back what was in it. */
export type FetchTable = (address: string) => Promise<unknown>;

/** Asks the server that the page came from, or the browser's cache when there is no network. */
export const pageFetch: FetchTable = async (address) => {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return answer.json();
};
