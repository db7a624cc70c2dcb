-- What a phone entered without signal and could not be recorded any more: kept so that nothing entered
-- is lost, until somebody has seen it. Codes only.
create table set_aside (
  command   uuid primary key,
  session   uuid not null,
  player    uuid not null,
  field     text not null,
  fitter    text not null,
  refused   uuid not null,
  code      text not null,
  sentence  text not null,
  entries   jsonb not null,
  at        timestamptz not null,
  seen_by   text,
  seen_at   timestamptz,
  check ((seen_by is null) = (seen_at is null))
);
create index set_aside_by_player on set_aside (player);
create index set_aside_unseen on set_aside (field) where seen_at is null;
