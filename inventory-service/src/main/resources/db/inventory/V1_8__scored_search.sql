-- What a search for a replacement weighs, and why it chose what it kept.
alter table helmet add column marks integer not null default 0 check (marks >= 0);
update helmet h set marks = d.reports
  from (select data ->> 'tag' as tag, count(*) as reports from journal
         where type like '%damage-reported%' and data ->> 'severity' = 'cosmetic' group by 1) d
 where d.tag = h.tag;
alter table reservation add column why text not null default '';
create index reservation_of_case on reservation (refit_case);
-- Lists and grids of a whole association.
create index helmet_by_place on helmet (place, model, size, tag);
create index case_need_of_open on case_need (status, need_key);
