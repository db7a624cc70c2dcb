-- Holds: a maker's recall, a standards body's notice, or what was found here, on helmets of a kind.
create table hold (
  hold        uuid primary key,
  reason      text not null check (reason in ('recall', 'standards-notice', 'own-finding')),
  reference   text not null check (reference ~ '^[A-Z0-9][A-Z0-9./-]{0,39}$'),
  model       text,
  lots        text[] not null,
  made_from   date,
  made_to     date,
  -- Lots for which it was lifted: what comes of them later is not held.
  lifted_lots text[] not null default '{}',
  matching    integer not null,
  worn        integer not null,
  open        boolean not null default true,
  -- Whether replacements were looked for before its first helmet was taken.
  planned     boolean not null default false,
  placed_by   text not null,
  placed_at   timestamptz not null,
  lifted_at   timestamptz,
  -- What its helmets' events follow from.
  event       uuid not null,
  correlation uuid not null,
  check (open = (lifted_at is null))
);
-- Tags on its list, known here or not.
create table hold_tag (
  tag  text not null,
  hold uuid not null references hold (hold),
  primary key (tag, hold)
);
-- Each helmet that it concerns: due until the helmet's own record says so.
create table hold_helmet (
  hold          uuid not null references hold (hold),
  tag           text not null,
  player        uuid,
  place         text not null,
  step          text not null check (step in ('due', 'held', 'freeing', 'freed')),
  held_at       timestamptz,
  put_aside_by  text,
  put_aside_at  timestamptz,
  -- The lift that frees it, and the command that it came with.
  freed_by      uuid,
  correlation   uuid,
  primary key (hold, tag)
);
create index hold_helmet_by_tag on hold_helmet (tag) where step in ('due', 'held');
create index hold_work on hold_helmet (step, (player is null), tag) where step in ('due', 'freeing');
-- Whether the conditions of a hold cover a helmet; its tag list is apart. What is not known of a
-- helmet counts as matching. HoldCriteria says the same.
create function hold_covers(
  c_model text, c_lots text[], c_from date, c_to date, model text, lot text, made date)
returns boolean language sql immutable as $$
  select (c_model is not null or cardinality(c_lots) > 0 or c_from is not null or c_to is not null)
     and (c_model is null or model = c_model)
     and (cardinality(c_lots) = 0 or lot = any (c_lots) or lot = 'not-stated')
     and (c_from is null or made is null or made >= c_from)
     and (c_to is null or made is null or made <= c_to)
$$;
