-- Since when somebody belongs to a course, and when they left; who left may come again.
alter table membership add column joined_on date;
update membership set joined_on =
    (select least(c.starts_on, current_date) from course c where c.id = membership.course_id);
alter table membership alter column joined_on set not null;

alter table membership add column left_on date;
alter table membership add column ended_by_id bigint references person (id);
-- Course and person while it lasts, null afterwards: one membership at a time, whoever is quicker.
alter table membership add column member_of varchar(60);
update membership set member_of = concat(course_id, '/', person_id);
alter table membership drop constraint membership_once;
alter table membership add constraint membership_once unique (member_of);
alter table membership add constraint membership_left_after_joining check (left_on >= joined_on);

create index membership_of_course on membership (course_id, role);
