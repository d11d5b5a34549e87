import { describe, expect, it } from 'vitest';
import { hasDisplay } from '../../../../src/cli/demo/display';

describe('a display', () => {
  it('is told by the environment on Linux, taken for granted on desktops, and never used in CI', () => {
    expect(hasDisplay({}, 'linux')).toBe(false);
    expect(hasDisplay({ DISPLAY: ':0' }, 'linux')).toBe(true);
    expect(hasDisplay({ WAYLAND_DISPLAY: 'wayland-0' }, 'linux')).toBe(true);
    expect(hasDisplay({ DISPLAY: ':0', CI: 'true' }, 'linux')).toBe(false);
    expect(hasDisplay({}, 'darwin')).toBe(true);
    expect(hasDisplay({ CI: '1' }, 'win32')).toBe(false);
  });
});
