-- What people say of aftercare. The tasks themselves follow from work done and the course content.
create sequence aftercare_word_seq increment by 50;

create table aftercare_word (
    id bigint primary key,
    tree_id bigint not null references tree (id),
    work_id bigint not null references work_done (id),
    task varchar(40) not null,
    times integer not null,
    -- Counts the words on one task: of two who speak at once the second is refused.
    number integer not null,
    what varchar(20) not null,
    on_day date not null,
    note varchar(2000),
    by_id bigint not null references person (id),
    recorded_at timestamp(6) with time zone not null,
    constraint aftercare_word_in_turn unique (work_id, task, times, number)
);

create index aftercare_word_of_tree on aftercare_word (tree_id);
