create sequence day_wish_seq increment by 50;

create table day_wish (
    id bigint primary key,
    session_id bigint not null references class_session (id),
    tree_id bigint not null references tree (id),
    technique varchar(60) not null,
    wish varchar(10) not null,
    said_by bigint not null references person (id),
    said_at timestamp(6) with time zone not null
);

create index day_wish_of_session on day_wish (session_id, id);

create table day_break (
    session_id bigint not null references class_session (id),
    position integer not null,
    from_minute integer not null,
    to_minute integer not null,
    primary key (session_id, position)
);

create sequence day_timetable_seq increment by 50;

create table day_timetable (
    id bigint primary key,
    session_id bigint not null references class_session (id),
    revision integer not null,
    from_minute integer not null,
    found varchar(10) not null,
    finish_minute integer not null,
    waiting_minutes integer not null,
    cost bigint not null,
    least_cost bigint not null,
    jobs integer not null,
    most_jobs integer not null,
    made_by bigint not null references person (id),
    made_at timestamp(6) with time zone not null,
    constraint day_timetable_once unique (session_id, revision)
);

create table day_slot (
    timetable_id bigint not null references day_timetable (id),
    position integer not null,
    tree_id bigint not null references tree (id),
    technique varchar(60) not null,
    phase integer not null,
    kind varchar(10) not null,
    cuts boolean not null,
    instructor_id bigint references person (id),
    from_minute integer not null,
    to_minute integer not null,
    primary key (timetable_id, position)
);

create table day_left_out (
    timetable_id bigint not null references day_timetable (id),
    position integer not null,
    tree_id bigint not null references tree (id),
    technique varchar(60) not null,
    because varchar(400) not null,
    primary key (timetable_id, position)
);

create table day_arrival (
    timetable_id bigint not null references day_timetable (id),
    position integer not null,
    person_id bigint not null references person (id),
    at_minute integer,
    primary key (timetable_id, position)
);
