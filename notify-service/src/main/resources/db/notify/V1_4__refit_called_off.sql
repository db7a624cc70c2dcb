-- Says that the booking does not hold and there is no other; null while it holds.
alter table refit_case add column unbooked_event uuid;
