-- Who entered a site, which nobody knows of those entered before, and whether it is the school's own ground:
-- then everybody may know where it lies.
alter table site add column entered_by_id bigint references person (id);
alter table site add column school_ground boolean default false not null;
