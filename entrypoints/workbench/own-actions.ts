import { changeLayer } from '../../src/keep/layers';
import type { KeptLayer } from '../../src/keep/schema';
import { withChange, withoutSlots } from '../../src/session/own/changed-layer';
import { typedForm, valueTyped } from '../../src/session/own/typed-value';
import type { OwnActions, OwnState } from '../../src/view/workbench/own/state';
import { withKeep } from '../shared/keep';
import { saveFile } from '../shared/save-file';
import type { Bench } from './bench';

/** What a user can do with corrections of their own. */
export function ownActions(
  { engine, packs }: Pick<Bench, 'engine' | 'packs'>,
  state: () => OwnState,
  show: (change: Partial<OwnState>) => void,
): { actions: OwnActions; read: () => Promise<void> } {
  /** Which question was asked last: an earlier one's answer is late. */
  let asked = 0;

  async function read(): Promise<void> {
    const { pack, sought, chosen } = state();
    if (pack === null) return;
    asked += 1;
    const mine = asked;
    const answer = await engine.ask({ about: 'own', pack, sought, chosen });
    if (mine !== asked) return;
    if (answer.ok) show({ told: answer.value });
    else show({ trouble: answer.trouble });
  }

  async function change(pack: string, work: (layer: KeptLayer) => KeptLayer | null): Promise<boolean> {
    const done = await withKeep((db) => changeLayer(db, pack, work));
    if (!done.ok) {
      show({ trouble: done.trouble });
      return true;
    }
    show({ trouble: null, proposal: null });
    if (done.value) await packs.changed();
    await read();
    return done.value !== null;
  }

  const actions: OwnActions = {
    open(pack) {
      if (state().pack === pack) return;
      show({ pack, sought: '', told: null, chosen: null, field: null, proposal: null });
      void read();
    },
    seek(sought) {
      show({ sought });
      void read();
    },
    choose: (entry) => show({ chosen: entry && { part: entry.part, entry: entry.entry }, field: null }),
    async keep({ part, entry }, { field, typed: was, value, like }, typed) {
      const { pack, told } = state();
      if (pack === null || told === null) return;
      const name = field.join('.');
      const now = valueTyped(typed, like);
      if (now === undefined) return show({ field: { name, wrong: { why: 'form', example: was || typedForm(like) } } });
      const mine = { part, entry, field, saw: value, now };
      const issue = await engine.ask({ about: 'correction', pack, typed: mine });
      if (!issue.ok) return show({ trouble: issue.trouble });
      if (issue.value) return show({ field: { name, wrong: { why: 'order', ...issue.value } } });
      const kept = await change(pack, (layer) => withChange(layer, mine, told.base));
      show({ field: { name, wrong: kept ? null : { why: 'stale' } } });
    },
    takeBack(slots) {
      const { pack } = state();
      if (pack !== null) void change(pack, (layer) => withoutSlots(layer, slots));
    },
    async propose(name, note) {
      const { pack } = state();
      if (pack === null) return;
      if (name.trim() === '') return show({ proposal: 'nameless' });
      const clean = (text: string) => text.normalize('NFC').trim();
      const made = await engine.ask({ about: 'proposal', pack, name: clean(name), note: clean(note) });
      show({ proposal: made.ok && made.value !== null ? { text: made.value } : 'failed' });
    },
    save: (text) => saveFile(`${state().pack ?? 'pack'}.proposal`, text, 'text/plain'),
  };
  return { actions, read };
}
