-- When each person last looked at their home page, so that it tells what others did since.
create table person_visit (
    person_id bigint not null primary key references person (id),
    -- From when on is told; the visit before the present one.
    since timestamp(6) with time zone not null,
    -- When the present visit began.
    moved_at timestamp(6) with time zone not null
);

-- What is told is read by when it happened.
create index step_event_by_time on step_event (happened_at);
create index ask_by_time on ask (asked_at);
create index ask_answer_by_time on ask_answer (answered_at);
create index observation_of_fact_by_time on observation (fact, recorded_at);
create index session_move_by_time on session_move (moved_at);
create index class_session_by_cancelled on class_session (cancelled_at);
create index enrolment_by_withdrawn on enrolment (withdrawn_at);
