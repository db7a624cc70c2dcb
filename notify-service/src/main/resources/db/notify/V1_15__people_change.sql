-- Players whose people changed, until they were looked at a second time: whoever was at work when
-- the change was committed did not see it, and the change did not see what they had not committed.
-- Those have numbers from from_xid on, and below after_xid, which is noted after the commit.
create table people_change (
  people_change bigint generated always as identity primary key,
  player uuid not null,
  from_xid xid8 not null default pg_snapshot_xmin(pg_current_snapshot()),
  after_xid xid8
);
