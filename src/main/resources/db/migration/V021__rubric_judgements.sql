-- A level of a rubric, given by one instructor to a tree or to a student.
create sequence rubric_judgement_seq increment by 50;

create table rubric_judgement (
    id bigint not null primary key,
    version bigint not null,
    rubric varchar(60) not null,
    tree_id bigint references tree (id),
    student_id bigint references person (id),
    by_id bigint not null references person (id),
    level_no integer,
    judged_on date not null,
    note varchar(2000),
    kept_at timestamp(6) with time zone not null,
    content_revision varchar(64),
    signed_at timestamp(6) with time zone,
    -- When everybody within reach could see it; null while a second judge is to look unswayed.
    opened_at timestamp(6) with time zone,
    second_wanted boolean not null,
    blind boolean not null,
    corrects bigint references rubric_judgement (id),
    superseded_by bigint references rubric_judgement (id),
    observation_id bigint references observation (id),
    -- Judge, rubric and subject while a draft, null afterwards: one draft at a time, whoever is
    -- quicker.
    draft_of varchar(120),
    constraint rubric_judgement_draft_once unique (draft_of),
    constraint rubric_judgement_superseded_once unique (superseded_by),
    constraint rubric_judgement_of_one check (
        (case when tree_id is null then 0 else 1 end)
        + (case when student_id is null then 0 else 1 end) = 1
    ),
    constraint rubric_judgement_level check (level_no between 0 and 9),
    constraint rubric_judgement_signed_whole check (
        signed_at is null or (level_no is not null and content_revision is not null)
    ),
    constraint rubric_judgement_draft_or_signed check (
        (case when signed_at is null then 0 else 1 end)
        + (case when draft_of is null then 0 else 1 end) = 1
    ),
    constraint rubric_judgement_opened_once_signed check (opened_at is null or signed_at is not null)
);

create index rubric_judgement_of_tree on rubric_judgement (tree_id, rubric, judged_on);
create index rubric_judgement_of_student on rubric_judgement (student_id, rubric, judged_on);
create index rubric_judgement_by_day on rubric_judgement (judged_on, rubric);
