// Runs before the first paint, so that no white page flashes in the dark.
{
  // Inside another page a touch could be stolen. Where the host does not forbid it, the page does not start.
  if (window.top !== window) document.documentElement.dataset.framed = '';
  let theme = null;
  try {
    theme = localStorage.getItem('cure-reckoner.theme');
  } catch {
    // A browser that keeps nothing gets the look of its own settings.
  }
  if (theme === 'day' || theme === 'dark' || theme === 'red') document.documentElement.dataset.theme = theme;
}
