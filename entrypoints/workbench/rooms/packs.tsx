import { PacksRoom } from '../../../src/view/workbench/PacksRoom';
import type { Bench, OpenRoom } from '../bench';

export function openRoom({ packs }: Bench): OpenRoom {
  return { content: () => <PacksRoom state={packs.state()} actions={packs.actions} /> };
}
