import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';

interface Axe {
  run(
    context: unknown,
    options: { readonly runOnly?: readonly string[] },
  ): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
}

/**
 * What axe-core finds wrong, by WCAG 2.2 AA and its own best practices: rule and elements; everywhere, or in what the
 * selectors name. In the dark the page differs by its colours alone, so that only these are looked at.
 */
export async function axeFaults(page: Page, within?: readonly string[]): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window)))
    await page.evaluate(readFileSync('node_modules/axe-core/axe.min.js', 'utf8'));
  return page.evaluate(async (selectors) => {
    const axe: Axe = Reflect.get(window, 'axe');
    const isDark = matchMedia('(prefers-color-scheme: dark)').matches;
    const context = selectors === undefined ? document : { include: selectors.map((one) => [one]) };
    const { violations } = await axe.run(context, isDark ? { runOnly: ['color-contrast'] } : {});
    return violations.map(
      ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`,
    );
  }, within);
}
