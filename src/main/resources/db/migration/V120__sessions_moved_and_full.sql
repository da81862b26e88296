-- A session may have fewer places than trees that want to come; null is as many as want to.
alter table class_session add column places integer;

-- What a session that was moved was before, oldest first: those who counted on it are told.
create table session_move (
    session_id bigint not null references class_session (id),
    position integer not null,
    held_on date not null,
    starts_at time not null,
    ends_at time not null,
    place varchar(120) not null,
    because varchar(500),
    moved_at timestamp(6) with time zone not null,
    moved_by_id bigint not null references person (id),
    primary key (session_id, position)
);

-- Who would come with which tree if there were a place, longest first. A row stays when its wait ends.
create sequence session_wait_seq increment by 50;

create table session_wait (
    id bigint not null primary key,
    session_id bigint not null references class_session (id),
    person_id bigint not null references person (id),
    tree_id bigint not null references tree (id),
    since timestamp(6) with time zone not null,
    ended_at timestamp(6) with time zone,
    -- Session and tree while it waits, null afterwards, so that it waits once.
    waits_for varchar(60),
    constraint session_wait_once unique (waits_for)
);

create index session_wait_of_session on session_wait (session_id);
create index session_wait_of_tree on session_wait (tree_id);
