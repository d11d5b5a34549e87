import type { EnquiryActions, EnquiryState } from '../../src/view/workbench/EnquiryRoom';
import type { BenchEngine } from './bench-engine';

/** What can be asked of the tables. A number is looked up when its form is sent, and anew when the packs change. */
export function enquiryActions(
  engine: BenchEngine,
  state: () => EnquiryState,
  show: (change: Partial<EnquiryState>) => void,
): { actions: EnquiryActions; packsChanged: () => void } {
  let last = 0;

  async function lookUp(serial: string): Promise<void> {
    last += 1;
    const mine = last;
    const reply = await engine.ask({ about: 'serial', serial, pack: state().pack });
    if (mine !== last) return;
    if (reply.ok) show({ answered: { serial, answer: reply.value }, trouble: null });
    else show({ trouble: reply.trouble });
  }

  const again = () => {
    const { answered } = state();
    if (answered) void lookUp(answered.serial);
  };

  return {
    actions: {
      write: (serial) => show({ serial }),
      choosePack(pack) {
        show({ pack });
        again();
      },
      ask(serial) {
        show({ serial });
        void lookUp(serial);
      },
    },
    packsChanged: again,
  };
}
