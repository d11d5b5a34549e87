import type { Bin } from './score';

const SIZE = 320;
const MARGIN = 40;
const at = (share: number): number => Math.round((MARGIN + share * (SIZE - 2 * MARGIN)) * 10) / 10;
const up = (share: number): number => Math.round((SIZE - at(share)) * 10) / 10;

/** A reliability plot: for each tenth what was said across, what came true upwards; on the line, what is said is so. */
export function reliabilityPlot(title: string, bins: readonly Bin[]): string {
  const most = Math.max(...bins.map(({ count }) => count));
  const points = bins
    .filter(({ count }) => count > 0)
    .map(({ count, said, right }) => {
      const size = (2 + 6 * Math.sqrt(count / most)).toFixed(1);
      return `<circle cx="${at(said / count)}" cy="${up(right / count)}" r="${size}"><title>${count}</title></circle>`;
    });
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${SIZE}" height="${SIZE}" font-family="sans-serif" font-size="11">
<rect width="100%" height="100%" fill="white"/>
<text x="${MARGIN}" y="20">${title}</text>
<path d="M${at(0)} ${up(0)}H${at(1)}V${up(1)}H${at(0)}Z" fill="none" stroke="#999"/>
<path d="M${at(0)} ${up(0)}L${at(1)} ${up(1)}" stroke="#999" stroke-dasharray="4"/>
<g fill="#246" fill-opacity="0.8">${points.join('')}</g>
<text x="${at(0.5)}" y="${SIZE - 8}" text-anchor="middle">said</text>
<text x="12" y="${up(0.5)}" text-anchor="middle" transform="rotate(-90 12 ${up(0.5)})">came true</text>
<text x="${at(0)}" y="${SIZE - 24}">0</text><text x="${at(1)}" y="${SIZE - 24}" text-anchor="end">1</text>
</svg>
`;
}
