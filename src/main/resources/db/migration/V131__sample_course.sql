-- A made-up course to try the service with, the site that was made for it where the school had none, and
-- its made-up people. Its trees are those these people keep.
create table sample_course (
    course_id bigint not null primary key references course (id),
    site_id bigint references site (id),
    by_id bigint not null references person (id),
    added_at timestamp(6) with time zone not null
);

create table sample_person (
    person_id bigint not null primary key references person (id),
    course_id bigint not null references course (id)
);

create index sample_person_of_course on sample_person (course_id);
