/** Why to stop, in plain words; no advice beyond the usual caution. */
const STOP_WORDS =
  'Pain, tingling, numbness or weakness in hand or arm is a reason to stop and to ask a doctor or physiotherapist.';

/** The caution that stands wherever practice, effort or comfort is spoken of. */
export const CAUTION = `${STOP_WORDS} This tool is no medical advice, and a comfortable-looking figure is no proof of safety.`;

/** The same where presses are counted and weighed. */
export const LOAD_CAUTION = `Figures of presses do not say what is healthy. ${CAUTION}`;
