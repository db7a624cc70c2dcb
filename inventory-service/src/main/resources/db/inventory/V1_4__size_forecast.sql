-- How many of each size the roster is expected to need, as sizing told last.
create table size_forecast (
  model     text not null,
  size      text not null,
  place_in_chart integer not null,
  needed_on date not null,
  expected  double precision not null,
  low       integer not null,
  high      integer not null,
  to_order  integer not null,
  told_at   timestamptz not null,
  primary key (model, size)
);
