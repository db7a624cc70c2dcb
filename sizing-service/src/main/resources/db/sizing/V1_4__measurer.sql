-- How far the first two readings of a head lie apart: what a measurer's repeat error follows from.
-- Unknown for heads that were recorded before this column was there.
alter table head add column apart_mm double precision check (apart_mm >= 0);

create index head_by_measurer on head (measured_by, measured_at desc);
