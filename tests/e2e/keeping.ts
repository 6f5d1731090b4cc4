import { expect, type Page } from '@playwright/test';
import { axeFaults } from './axe.ts';

/** The field with the name of the open design. */
export const nameField = (page: Page) => page.getByRole('textbox', { name: 'Name of the design' });

/** Opens the page and waits until a design stands on it. */
export async function openPage(page: Page): Promise<void> {
  await page.goto('./');
  await expect(page.getByRole('heading', { name: 'Handful' })).toBeVisible();
  await expect(page.locator('[data-key]').first()).toBeVisible();
}

/** Gives the open design another name, as one does: type over it, Enter. */
export async function rename(page: Page, name: string): Promise<void> {
  await nameField(page).fill(name);
  await nameField(page).press('Enter');
}

/** Chooses from a menu of the header. */
export async function choose(page: Page, menu: string, item: string): Promise<void> {
  await page.getByRole('button', { name: menu, exact: true }).click();
  await page
    .getByRole('menuitem', { name: item, exact: true })
    .or(page.getByRole('menuitemradio', { name: item, exact: true }))
    .click();
}

/** Hands a file to the page through Import. */
export async function importFile(page: Page, name: string, text: string): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await choose(page, 'Designs', 'Import a file…');
  await (await chooser).setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** Lets go of a file, or of a text, over the page. */
export async function drop(page: Page, what: { text: string; asFile: boolean }): Promise<void> {
  await page.evaluate(({ text, asFile }) => {
    const dataTransfer = new DataTransfer();
    if (asFile) dataTransfer.items.add(new File([text], 'dropped.json', { type: 'application/json' }));
    else dataTransfer.setData('text/plain', text);
    const init = { dataTransfer, bubbles: true, cancelable: true };
    document.body.dispatchEvent(new DragEvent('dragover', init));
    document.body.dispatchEvent(new DragEvent('drop', init));
  }, what);
}

/** Pastes a text onto the page, outside of any field. */
export async function paste(page: Page, text: string): Promise<void> {
  await page.evaluate((text) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', text);
    document.body.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }),
    );
  }, text);
}

/** What axe-core finds wrong in the header, its menus and whatever dialog is open; desks have tests of their own. */
export function shellFaults(page: Page): Promise<readonly string[]> {
  return axeFaults(page, ['header', 'dialog', '[popover]', '[role=status]']);
}
