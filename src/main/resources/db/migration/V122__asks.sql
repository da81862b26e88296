-- What keepers ask of their instructors at a technique of their tree: for the step, or a question.
create sequence ask_seq increment by 50;

create table ask (
    id bigint not null primary key,
    tree_id bigint not null references tree (id),
    technique varchar(60) not null,
    kind varchar(20) not null,
    words varchar(1000),
    by_id bigint not null references person (id),
    asked_at timestamp(6) with time zone not null,
    -- When it was answered or taken back.
    closed_at timestamp(6) with time zone,
    -- Tree, technique and kind while it is open, null afterwards: asked once at a time.
    open_for varchar(120),
    constraint ask_once unique (open_for),
    constraint ask_kind_known check (kind in ('STEP', 'QUESTION'))
);

create index ask_of_tree on ask (tree_id);

-- The answer: words, or the step that was assigned.
create sequence ask_answer_seq increment by 50;

create table ask_answer (
    id bigint not null primary key,
    ask_id bigint not null references ask (id),
    words varchar(2000),
    step_id bigint references step (id),
    by_id bigint not null references person (id),
    answered_at timestamp(6) with time zone not null,
    constraint ask_answered_once unique (ask_id)
);
