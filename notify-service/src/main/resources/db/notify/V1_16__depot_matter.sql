-- Restock requests of which a depot is still to be told, until they are told together. What is told
-- is how the request stands then.
create table depot_matter (
  request     uuid primary key,
  depot       text not null,
  -- The event that was heard last, and its correlation.
  event       uuid not null,
  correlation uuid not null,
  -- It waits for others until then.
  due_at      timestamptz not null
);

create index depot_matter_due on depot_matter (depot, due_at);
