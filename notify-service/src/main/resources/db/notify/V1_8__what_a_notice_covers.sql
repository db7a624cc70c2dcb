-- What a notice covers: one thing, or one for each child of a household. One cause never gives two
-- notices of a kind to one person, whatever is delivered twice. The rows of a notice that was
-- cancelled to be told anew go, so that another can cover the same.
create table notice_cover (
  notice         uuid not null references notice (notice),
  about          uuid not null,
  primary key (notice, about),
  kind           text not null,
  recipient      text not null,
  unique (about, kind, recipient),
  refit_case     uuid,
  player         uuid,
  -- The slot that it told, or the day by which something is to be done.
  slot_starts_at timestamptz,
  slot_field     text,
  -- It came to an end while the notice waited: this part need not be said any more.
  over           boolean not null default false
);

insert into notice_cover
  (notice, about, kind, recipient, refit_case, player, slot_starts_at, slot_field)
select n.notice, n.about, n.kind, n.recipient, n.refit_case,
  (select p.player from notice_player p where p.notice = n.notice order by p.player limit 1),
  n.slot_starts_at, n.slot_field
from notice n;

create index notice_cover_by_case on notice_cover (refit_case, recipient) where refit_case is not null;
create index notice_cover_by_player on notice_cover (player, recipient) where player is not null;

alter table notice drop constraint notice_about_kind_recipient_key;
create index notice_by_about on notice (about, kind, recipient);

-- Where a player is fitted; null until it was told.
alter table player add column field text;

alter table refit_case add column opened_at timestamptz;

-- The newest word on a player's sign-off, and until when news of it waits.
create table fit (
  player         uuid primary key,
  version        bigint not null default 0,
  state          text check (state in ('signed-off', 'withdrawn', 'lapsed')),
  event          uuid,
  at             timestamptz,
  why            text,
  correlation_id uuid,
  wait_until     timestamptz,
  check ((event is null) = (state is null)),
  check ((event is null) = (at is null))
);

create index fit_waiting on fit (wait_until) where wait_until is not null;

-- Re-checks that became due since the sign-off.
create table recheck (
  event          uuid primary key,
  player         uuid not null,
  due_at         timestamptz not null,
  lapses_at      timestamptz,
  correlation_id uuid not null
);

create index recheck_by_player on recheck (player);
