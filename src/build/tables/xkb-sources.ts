import { spawnSync } from 'node:child_process';

const PACKAGES = ['libxkbcommon-tools', 'libx11-data', 'xkb-data'];
// biome-ignore lint/suspicious/noTemplateCurlyInString: dpkg-query fills these in
const FORMAT = '${Package} ${Version}\\n';

/**
 * Versions of the Debian packages that say how keys are read, one line each; '' where there is no Debian. Layouts change
 * from version to version, so what was written down holds for these alone.
 */
export function xkbVersions(): string {
  const args = ['--show', '--showformat', FORMAT, ...PACKAGES];
  const asked = spawnSync('dpkg-query', args, { encoding: 'utf8' });
  return asked.status === 0 ? asked.stdout.trim().split('\n').sort().join('\n') : '';
}
