-- Families who asked for a call: one a day for each person and matter.
create table help_call (
  help        uuid primary key,
  version     bigint not null check (version >= 1),
  notice      uuid not null references notice (notice),
  recipient   text not null,
  -- Whose fitters look after it; null when no field is known, then the equipment manager does.
  field       text,
  asked_at    timestamptz not null,
  answered_at timestamptz,
  answered_by text,
  check ((answered_at is null) = (answered_by is null))
);

create index help_call_open on help_call (asked_at) where answered_at is null;
create index help_call_by_notice on help_call (notice);

-- By whose link a guardian chose the slot; null when it was booked for them.
alter table refit_case add column booking_notice uuid;
