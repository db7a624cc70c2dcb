-- Restock requests that are open, so that a depot's morning can be told.
create table restock_open (
  request      uuid primary key,
  place        text not null,
  -- Where it comes from, when that is settled.
  from_place   text,
  item         text not null,
  quantity     integer not null check (quantity > 0),
  expected_at  timestamptz not null,
  requested_at timestamptz not null,
  state        text not null check (state in ('requested', 'picked', 'shipped'))
);

-- What staff were told of a day. The key makes it once, however many processes look, and however
-- often; no notice: there was nothing to say.
create table digest (
  recipient text not null,
  kind      text not null check (kind in ('depot-day', 'field-day', 'manager-day')),
  day       date not null,
  notice    uuid references notice (notice) on delete set null,
  at        timestamptz not null,
  primary key (recipient, kind, day)
);

create index refit_case_open_by_field on refit_case (field) where outcome is null;
create index refit_case_booked on refit_case (booking_field, starts_at) where outcome is null;
create index notice_given_up on notice (changed_at) where state = 'undeliverable';
