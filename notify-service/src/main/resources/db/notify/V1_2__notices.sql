-- One row a notice: the newest state of its stream, and when it is to be tried next.
create table notice (
  notice           uuid primary key,
  -- One cause never gives two notices of a kind to one person, whatever is delivered twice.
  about            uuid not null,
  kind             text not null,
  recipient        text not null,
  unique (about, kind, recipient),
  version          bigint not null check (version >= 1),
  state            text not null check (state in ('raised', 'sent', 'undeliverable', 'acknowledged', 'cancelled')),
  urgency          text not null check (urgency in ('do-not-wear', 'soon', 'normal')),
  template         text not null,
  template_version integer not null check (template_version >= 1),
  language         text not null,
  refit_case       uuid,
  slot_starts_at   timestamptz,
  slot_field       text,
  correlation_id   uuid not null,
  raised_event     uuid not null,
  raised_at        timestamptz not null,
  changed_at       timestamptz not null,
  why              text,
  attempts         integer not null default 0 check (attempts >= 0),
  -- When to try next; while a try runs, when it counts as cut off. Null: never again.
  next_try_at      timestamptz,
  check ((next_try_at is not null) = (state = 'raised'))
);

create index notice_due on notice (next_try_at) where state = 'raised';
create index notice_by_case on notice (refit_case) where refit_case is not null;
create index notice_by_recipient on notice (recipient);
create index notice_newest on notice (raised_at desc, notice desc);

create table notice_cause (
  notice uuid not null references notice (notice),
  event  uuid not null,
  primary key (notice, event)
);

create table notice_player (
  notice uuid not null references notice (notice),
  player uuid not null,
  primary key (notice, player)
);

create index notice_player_by_player on notice_player (player);

-- The words as they were rendered. The only place beside the local copies where personal data
-- stands: erasing the reader or the player deletes the row.
create table notice_text (
  notice   uuid primary key references notice (notice),
  subject  text not null,
  letter   json not null,
  plain    text not null,
  html     text not null,
  calendar text
);

-- Every try to send. No outcome: it runs, or was cut off by a crash and nobody knows how it ended.
create table notice_try (
  notice     uuid not null references notice (notice),
  attempt    integer not null check (attempt >= 1),
  channel    text not null check (channel in ('mail')),
  started_at timestamptz not null,
  ended_at   timestamptz,
  outcome    text check (outcome in ('taken', 'refused', 'failed')),
  -- A code such as 550 5.1.1 or connect-failed; never the server's sentence, which may hold an address.
  code       text,
  primary key (notice, attempt),
  check ((ended_at is null) = (outcome is null))
);
