-- What was said of fits in a helmet, for its time line; one row an event, so that one that is
-- delivered twice is one. Ids only. Fits from before this table stand in fitting's own records.
create table helmet_fit (
  event  uuid primary key,
  tag    text not null,
  kind   text not null
    check (kind in ('tried', 'passed', 'failed', 'signed-off', 'withdrawn', 'lapsed')),
  player uuid not null,
  place  text,
  why    text not null default '',
  at     timestamptz not null
);
create index helmet_fit_by_tag on helmet_fit (tag, at);
