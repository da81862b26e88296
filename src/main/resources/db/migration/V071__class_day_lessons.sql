-- When the lesson of a class day is held; no row means first, and as long as the lesson takes.
create table day_lesson (
    session_id bigint primary key references class_session (id),
    from_minute integer,
    minutes integer
);
