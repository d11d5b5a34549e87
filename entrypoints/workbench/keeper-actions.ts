import { changeDesk } from '../../src/keep/desks';
import type { KeptDesk } from '../../src/keep/schema';
import type { RowTold } from '../../src/session/keeper/desk-told';
import type { Decision } from '../../src/sharing/propose/merge-proposals';
import type { KeeperActions, KeeperState } from '../../src/view/workbench/keeper/state';
import { withKeep } from '../shared/keep';
import { saveFile } from '../shared/save-file';
import type { Bench } from './bench';

/** Bytes; a proposal has 2,000 changes at most. */
const LARGEST = 4_000_000;

/** What a keeper can do at a pack's desk. */
export function keeperActions(
  { engine, packs }: Pick<Bench, 'engine' | 'packs'>,
  state: () => KeeperState,
  show: (change: Partial<KeeperState>) => void,
): { actions: KeeperActions; read: () => Promise<void> } {
  async function read(): Promise<void> {
    const { pack } = state();
    if (pack === null) return;
    const answer = await engine.ask({ about: 'desk', pack });
    if (state().pack !== pack) return;
    if (answer.ok) show({ told: answer.value });
    else show({ trouble: answer.trouble });
  }

  async function change(work: (desk: KeptDesk) => KeptDesk): Promise<void> {
    const { pack } = state();
    if (pack === null) return;
    const done = await withKeep((db) => changeDesk(db, pack, work));
    show({ trouble: done.ok ? null : done.trouble, outcome: null });
    await read();
  }

  const decided = (desk: KeptDesk, rows: readonly RowTold[], decision: Decision | null): KeptDesk => ({
    ...desk,
    decisions: [
      ...desk.decisions.filter(([slot]) => !rows.some((row) => row.slot === slot)),
      ...(decision ? rows.map(({ slot, saw }) => [slot, decision, saw] as const) : []),
    ],
  });

  const actions: KeeperActions = {
    open(pack) {
      show({ pack, told: null, outcome: null, trouble: null });
      void read();
    },
    async bring(files) {
      const texts = await Promise.all(files.map(async (file) => (file.size > LARGEST ? '' : await file.text())));
      await change((desk) => ({ ...desk, proposals: [...new Set([...desk.proposals, ...texts])] }));
    },
    clear: () => void change((desk) => ({ ...desk, proposals: [], decisions: [] })),
    decide: (row, decision) => void change((desk) => decided(desk, [row], decision)),
    acceptAll() {
      const rows = state().told?.rows ?? [];
      const fitting = rows.filter((row) => row.decision === null && (row.state === 'open' || row.state === 'already'));
      void change((desk) => decided(desk, fitting, { do: 'accept', offer: 0 }));
    },
    async publish(passphrase) {
      const { pack } = state();
      if (pack === null) return;
      const answer = await engine.ask({ about: 'publish', pack, passphrase, at: new Date().toISOString() });
      if (!answer.ok) return show({ trouble: answer.trouble });
      const outcome = answer.value;
      if (outcome.state === 'trouble') return show({ trouble: outcome.trouble });
      show({ trouble: null, outcome, ...(outcome.state === 'published' ? { pack: outcome.id } : {}) });
      if (outcome.state === 'published') await packs.changed(pack);
      await read();
    },
    save: ({ name, text }) => saveFile(name, text, 'application/octet-stream'),
  };
  return { actions, read };
}
