-- Which models have a chart; the sizes stand in the chart's events.
create table size_chart (
  model   text primary key,
  version integer not null check (version >= 1)
);
