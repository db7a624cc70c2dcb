-- A request is for re-fit cases, for the shelf, or both: its quantity is the sum.
alter table restock add column for_stock integer not null default 0 check (for_stock >= 0);
alter table restock add constraint restock_for_stock_is_part_of_it check (for_stock <= quantity);
-- How long things take to come is learned from these; what came is shown when it is over.
alter table restock add column requested_at timestamptz;
alter table restock add column sent_at timestamptz;
alter table restock add column received_at timestamptz;
alter table restock add column came integer;
alter table restock add column damaged integer;
create index restock_received on restock (received_at) where state = 'received';
create index restock_open on restock (place, item) where state in ('requested', 'picked', 'shipped');
create index reservation_live_part on reservation (from_place, item) where status = 'live';
