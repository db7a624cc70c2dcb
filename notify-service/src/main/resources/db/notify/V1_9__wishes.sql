-- How and when a guardian wants to be written to; follows from the newest event wishes-set.
create table wish (
  recipient  text primary key,
  version    bigint not null check (version >= 1),
  -- Channels in the person's order, with spaces between; empty for the association's order.
  channels   text not null,
  quiet_from time,
  quiet_to   time,
  -- Null: that of the player's field.
  zone       text,
  set_by     text not null check (set_by in ('guardian', 'staff')),
  at         timestamptz not null,
  check ((quiet_from is null) = (quiet_to is null)),
  check (quiet_from <> quiet_to)
);

-- News can be turned on again: the row stays, the journal has the proof of each turn.
alter table opt_out add column off boolean not null default true;

create index guardian_by_name on guardian (lower(name));
