-- Who moved what by hand and why, and the order of the moves: two of one instant have one too.
alter table ledger_move add column nr bigint generated always as identity;
alter table ledger_move add column reason text not null default '';
alter table ledger_move add column done_by text not null default '';
create unique index ledger_move_by_nr on ledger_move (nr);
-- The newest count of each part at each place; opening stock is one. Rebuilt from stock-counted.
create table stock_counted (
  place      text not null,
  item       text not null,
  model      text not null,
  counted    integer not null check (counted >= 0),
  variance   integer not null,
  counted_by text not null,
  counted_at timestamptz not null,
  primary key (place, item, model)
);
insert into stock_counted (place, item, model, counted, variance, counted_by, counted_at)
  select distinct on (1, 2, 3)
         data ->> 'place', data ->> 'item', coalesce(data ->> 'model', ''),
         (data ->> 'counted')::int, (data ->> 'variance')::int, data ->> 'by',
         (data ->> 'at')::timestamptz
    from journal where type = 'org.tapeline.inventory.stock-counted.v1'
   order by 1, 2, 3, position desc;
-- Parts that went into a helmet for which the compatibility table does not list them: booked as the
-- world is, and to be looked at by the equipment manager.
create table part_to_check (
  session    uuid not null,
  item       text not null,
  place      text not null,
  tag        text not null,
  model      text not null,
  used_at    timestamptz not null,
  checked_by text,
  checked_at timestamptz,
  primary key (session, item),
  check ((checked_by is null) = (checked_at is null))
);
create index part_to_check_open on part_to_check (used_at) where checked_at is null;
