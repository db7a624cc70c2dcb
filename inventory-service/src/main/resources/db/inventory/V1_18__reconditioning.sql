-- Batches for the reconditioner. A draft is a list that people pack by; what has gone is told by the
-- batch's events, and these rows show it.
create table reconditioning_batch (
  batch         uuid primary key,
  place         text not null references place (code),
  reconditioner text not null,
  state         text not null check (state in ('draft', 'sent', 'closed')),
  made_at       timestamptz not null,
  sent_on       date,
  back_by       date,
  check (state = 'draft' or (sent_on is not null and back_by is not null))
);
create table reconditioning_line (
  batch           uuid not null references reconditioning_batch (batch),
  tag             text not null references helmet (tag),
  packed          boolean not null default false,
  outcome         text check (outcome in ('recertified', 'rejected', 'as-it-went', 'lost')),
  certified_until date,
  cost_cents      bigint check (cost_cents >= 0),
  back_on         date,
  primary key (batch, tag),
  check ((outcome is null) = (back_on is null))
);
-- Never one helmet in two batches; one that is missing stays in its own until it is found.
create unique index one_helmet_one_batch on reconditioning_line (tag) where outcome is null;
