-- What is known of a re-fit case, put together from its events in whatever order they came.
create table refit_case (
  refit_case           uuid primary key,
  player               uuid not null,
  opened_event         uuid,
  correlation_id       uuid,
  urgency              text check (urgency in ('do-not-wear', 'soon')),
  why                  text,
  field                text,
  team                 text,
  booking_event        uuid,
  booking_version      bigint,
  booking_field        text,
  starts_at            timestamptz,
  ends_at              timestamptz,
  zone                 text,
  closed_event         uuid,
  outcome              text check (outcome in ('fitted', 'cancelled')),
  -- Until then a notice waits for what would make it complete; null once the wait is over.
  wait_until           timestamptz,
  check ((opened_event is null) = (urgency is null)),
  check ((booking_event is null) = (starts_at is null)),
  check ((closed_event is null) = (outcome is null)),
  check (ends_at > starts_at)
);

create index refit_case_waiting on refit_case (wait_until) where wait_until is not null;
create index refit_case_open_by_player on refit_case (player) where outcome is null;

-- The amount that a depot was told of each restock request.
create table restock_told (
  request  uuid primary key,
  quantity integer not null check (quantity > 0)
);
