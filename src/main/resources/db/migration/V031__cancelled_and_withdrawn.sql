-- A class date called off and an enrolment taken back stay in the record, so that whoever counted on
-- them can be told.
alter table class_session add column changed_at timestamp(6) with time zone;
update class_session set changed_at = current_timestamp;
alter table class_session alter column changed_at set not null;

alter table class_session add column cancelled_at timestamp(6) with time zone;
alter table class_session add column cancelled_by_id bigint references person (id);
alter table class_session add column cancelled_because varchar(500);

alter table enrolment add column withdrawn_at timestamp(6) with time zone;
-- The tree while it comes, null afterwards: it comes once, and may come again after it was withdrawn.
alter table enrolment add column coming_tree_id bigint;
update enrolment set coming_tree_id = tree_id;
alter table enrolment drop constraint enrolment_tree_once;
alter table enrolment add constraint enrolment_tree_comes_once unique (session_id, coming_tree_id);
create index enrolment_of_person on enrolment (person_id);
