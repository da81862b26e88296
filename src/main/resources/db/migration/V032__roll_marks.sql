-- Who came to a class. A mark is never changed: another takes its place.
create sequence roll_mark_seq increment by 50;

create table roll_mark (
    id bigint not null primary key,
    session_id bigint not null references class_session (id),
    person_id bigint not null references person (id),
    presence varchar(20) not null,
    by_id bigint not null references person (id),
    marked_at timestamp(6) with time zone not null,
    replaced_at timestamp(6) with time zone,
    -- Session and person while in force, null afterwards: one mark at a time, whoever is quicker.
    marked_for varchar(60),
    constraint roll_mark_once unique (marked_for),
    constraint roll_mark_known check (presence in ('CAME', 'LATE', 'AWAY'))
);

create index roll_mark_of_session on roll_mark (session_id);
create index roll_mark_of_person on roll_mark (person_id, session_id);
