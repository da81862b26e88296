-- What was seen or measured. A row is never changed but to name the one that corrects it.
create sequence observation_seq increment by 50;

create table observation (
    id bigint primary key,
    tree_id bigint not null references tree (id),
    fact varchar(60) not null,
    number_value double precision,
    flag_value boolean,
    word_value varchar(60),
    observed_on date not null,
    source varchar(20) not null,
    by_id bigint not null references person (id),
    recorded_at timestamp(6) with time zone not null,
    note varchar(2000),
    wound_id bigint references wound (id),
    branch_id bigint references branch (id),
    at_height_mm double precision,
    superseded_by bigint references observation (id),
    constraint observation_has_one_value check (
        (case when number_value is null then 0 else 1 end)
        + (case when flag_value is null then 0 else 1 end)
        + (case when word_value is null then 0 else 1 end) = 1
    ),
    constraint observation_of_one_place check (
        (case when wound_id is null then 0 else 1 end)
        + (case when branch_id is null then 0 else 1 end)
        + (case when at_height_mm is null then 0 else 1 end) <= 1
    ),
    constraint observation_on_the_trunk check (at_height_mm between 0 and 5000),
    constraint observation_corrects_one unique (superseded_by),
    constraint observation_not_of_itself check (superseded_by <> id)
);

create index observation_of_tree on observation (tree_id, observed_on, id);
create index observation_of_wound on observation (wound_id);
create index observation_of_branch on observation (branch_id);
