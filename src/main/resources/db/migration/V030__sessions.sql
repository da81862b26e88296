create sequence class_session_seq increment by 50;

create table class_session (
    id bigint primary key,
    version bigint not null,
    course_id bigint not null references course (id),
    held_on date not null,
    starts_at time not null,
    ends_at time not null,
    lesson varchar(60),
    place varchar(120) not null
);

create index class_session_of_course on class_session (course_id, held_on);
create index class_session_of_day on class_session (held_on);

create table class_session_instructor (
    session_id bigint not null references class_session (id),
    position integer not null,
    person_id bigint not null references person (id),
    primary key (session_id, position),
    constraint class_session_instructor_once unique (session_id, person_id)
);

create sequence enrolment_seq increment by 50;

create table enrolment (
    id bigint primary key,
    session_id bigint not null references class_session (id),
    person_id bigint not null references person (id),
    tree_id bigint not null references tree (id),
    bench varchar(20) not null,
    constraint enrolment_tree_once unique (session_id, tree_id)
);
