create table refit_case (
  refit_case uuid primary key,
  player     uuid not null,
  field      text not null,
  urgency    text not null check (urgency in ('do-not-wear', 'soon')),
  opened_at  timestamptz not null,
  open       boolean not null
);
create table case_need (
  refit_case    uuid not null references refit_case (refit_case),
  need_key      text not null,
  kind          text not null check (kind in ('helmet', 'part')),
  model         text,
  size          text,
  item          text,
  status        text not null check (status in ('waiting', 'reserved', 'done')),
  waiting_since timestamptz not null,
  primary key (refit_case, need_key)
);
create index waiting_list on case_need (need_key) where status = 'waiting';
create table reservation (
  id         uuid primary key,
  refit_case uuid not null references refit_case (refit_case),
  need_key   text not null,
  player     uuid not null,
  tag        text references helmet (tag),
  item       text,
  from_place text not null,
  to_place   text not null,
  ready_at   timestamptz not null,
  expires_at timestamptz not null,
  status     text not null check (status in ('live', 'fulfilled', 'released')),
  check ((tag is null) <> (item is null))
);
-- Never one helmet for two cases, whatever the program does.
create unique index one_helmet_one_case on reservation (tag) where status = 'live';
create unique index one_need_once on reservation (refit_case, need_key) where status = 'live';
create table restock (
  request     uuid primary key,
  kind        text not null check (kind in ('restock', 'transfer')),
  place       text not null,
  from_place  text,
  item        text not null,
  model       text,
  size        text,
  tag         text,
  quantity    integer not null check (quantity >= 1),
  state       text not null
    check (state in ('requested', 'picked', 'shipped', 'received', 'cancelled')),
  expected_at timestamptz not null,
  changed_at  timestamptz not null,
  check ((kind = 'transfer') = (from_place is not null))
);
create unique index one_request_to_merge_into on restock (place, item)
  where kind = 'restock' and state = 'requested';
create table restock_cause (
  request    uuid not null references restock (request),
  refit_case uuid not null,
  need_key   text not null,
  primary key (request, refit_case, need_key)
);
