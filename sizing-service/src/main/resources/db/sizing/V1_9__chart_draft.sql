-- In which unit a chart was written, so that it can be written out in it. Unknown for charts that
-- were published before this column was there.
alter table size_chart add column unit text check (unit in ('mm', 'cm', 'in'));

-- Charts that were imported and that nobody has published yet, the newest of each model. The id is
-- another one with each import: whoever publishes says by it which draft was looked at.
create table chart_draft (
  model    text primary key,
  draft    uuid not null unique,
  unit     text not null check (unit in ('mm', 'cm', 'in')),
  sizes    text not null,
  warnings text not null
);
