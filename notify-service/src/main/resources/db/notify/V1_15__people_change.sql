-- Players whose people changed, until they were looked at a second time: whoever was at work when
-- the change was committed did not see it, and the change did not see what they had not committed.
create table people_change (
  people_change bigint generated always as identity primary key,
  player uuid not null,
  after_xid xid8
);
