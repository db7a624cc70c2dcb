// Codes and moments in words.
export const said = (pack, code) => pack.said[code] ?? code.replaceAll('-', ' ');

export const hour = (at) => new Date(at).toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });

export const age = (at) => {
  const minutes = Math.floor((Date.now() - Date.parse(at)) / 60_000);
  if (minutes < 1) return 'just now';
  if (minutes < 60) return `${minutes} min ago`;
  const hours = Math.floor(minutes / 60);
  return hours < 48 ? `${hours} h ago` : `${Math.floor(hours / 24)} days ago`;
};

export const needSaid = (pack, need) =>
  need.kind === 'helmet' ? `${said(pack, need.model)} ${said(pack, need.size)}` : said(pack, need.item);

export const advisedSaid = (pack, player) =>
  player.advised.map((a) => `${said(pack, a.model)}: ${a.size ? said(pack, a.size) : 'no size fits'}`);

/**
 * Whether the player may take the field, as the service said it last. The phone says "may wear" of
 * itself never: what is too old is not known, what was done here only is not signed off.
 */
export const wear = (held, player) => {
  const old = Date.now() - Date.parse(held.asOf) > held.pack.wearStateHoldsSeconds * 1000;
  if (old) return { code: 'unknown', said: 'Not known', reason: `since ${hour(held.asOf)}, no signal` };
  return { ...player.state, age: `as of ${hour(held.asOf)}, ${age(held.asOf)}` };
};
