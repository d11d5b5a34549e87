import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { collect } from '../src/listing/collect';

// Injected into one document after a press of the button; what it returns is the answer to the injection.
export default defineUnlistedScript(() => collect(document));
