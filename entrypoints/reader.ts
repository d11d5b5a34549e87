import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { collectInSlices } from '../src/listing/collect';

// Injected into one document after a press of the button; what it returns, once it is there, is the answer to the
// injection. In slices, so that a large page goes on answering its user.
export default defineUnlistedScript(() => collectInSlices(document));
