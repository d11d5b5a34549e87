import type { PackIssue } from '../../pack/issues';
import { parsePack } from '../../pack/parse';
import type { Pack } from '../../pack/schema/index';
import { applyChanges } from '../../sharing/propose/apply-changes';
import { type Change, slotOf } from '../../sharing/propose/changes';

/**
 * What would be wrong with the pack if one more of its fields said something else, or null. A pack that isn't in order
 * speaks without any of the user's corrections, so that such a one is refused before it is kept.
 */
export function issueWith(pack: Pack, changes: readonly Change[], more: Change): PackIssue | null {
  const others = changes.filter((change) => slotOf(change) !== slotOf(more));
  // Whatever the pack says there now is meant to go, so that it clashes with nothing.
  const there = changes.find((change) => slotOf(change) === slotOf(more));
  const trial = there?.do === 'change' && more.do === 'change' ? { ...there, now: more.now } : more;
  const { pack: own } = applyChanges(pack, [...others, trial as Change]);
  return parsePack(JSON.stringify(own)).issues?.[0] ?? null;
}
