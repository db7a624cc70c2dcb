-- What has been taken from the shelf on a pick list that is not done yet.
create table restock_taken (
  request  uuid primary key references restock (request),
  taken_by text not null,
  at       timestamptz not null
);
