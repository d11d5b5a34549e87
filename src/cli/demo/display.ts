/** Is there a screen on which a window would be seen? */
export function hasDisplay(env = process.env, platform = process.platform): boolean {
  if (/^(?:1|true)$/i.test(env.CI ?? '')) return false;
  if (platform === 'darwin' || platform === 'win32') return true;
  return Boolean(env.DISPLAY || env.WAYLAND_DISPLAY);
}
