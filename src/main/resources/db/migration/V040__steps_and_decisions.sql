-- A verdict as it was when someone acted on it; it needs nothing else to be understood.
create sequence decision_seq increment by 50;

create table decision (
    id bigint primary key,
    tree_id bigint not null references tree (id),
    on_day date not null,
    content_revision varchar(64) not null,
    standing varchar(200000) not null,
    by_id bigint not null references person (id),
    decided_at timestamp(6) with time zone not null
);

create index decision_of_tree on decision (tree_id);

create sequence step_seq increment by 50;

create table step (
    id bigint primary key,
    version bigint not null,
    tree_id bigint not null references tree (id),
    technique varchar(60) not null,
    state varchar(20) not null,
    assigned_by_id bigint not null references person (id),
    assigned_on date not null,
    from_day date,
    until_day date,
    note varchar(2000),
    decision_id bigint references decision (id),
    done_on date,
    reported_at timestamp(6) with time zone,
    -- Tree and technique while the step is open, null afterwards: two open steps for the same
    -- technique cannot be, whoever is quicker.
    open_for varchar(100),
    constraint step_open_once unique (open_for)
);

create index step_of_tree on step (tree_id, technique);
create index step_by_state on step (state);

create sequence step_waiver_seq increment by 50;

create table step_waiver (
    id bigint primary key,
    step_id bigint not null references step (id),
    reason_key varchar(120) not null,
    why varchar(1000) not null,
    by_id bigint not null references person (id),
    waived_on date not null
);

create index step_waiver_of_step on step_waiver (step_id);

create sequence step_report_seq increment by 50;

create table step_report (
    id bigint primary key,
    step_id bigint not null references step (id),
    done_on date not null,
    evidence varchar(4000) not null,
    foliage_share double precision,
    root_share double precision,
    wound_place varchar(120),
    wound_width_mm double precision,
    wound_length_mm double precision,
    container_kind varchar(20),
    container_description varchar(200),
    container_litres double precision,
    by_id bigint not null references person (id),
    reported_at timestamp(6) with time zone not null
);

create index step_report_of_step on step_report (step_id);

create sequence step_event_seq increment by 50;

create table step_event (
    id bigint primary key,
    step_id bigint not null references step (id),
    became varchar(20) not null,
    by_id bigint not null references person (id),
    happened_at timestamp(6) with time zone not null,
    note varchar(4000)
);

create index step_event_of_step on step_event (step_id);
