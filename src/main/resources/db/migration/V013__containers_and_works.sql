-- What trees stood in, and the work done on them.
create sequence container_stay_seq increment by 50;

create table container_stay (
    id bigint primary key,
    tree_id bigint not null references tree (id),
    kind varchar(20) not null,
    description varchar(200),
    litres double precision,
    since date not null,
    by_id bigint not null references person (id),
    recorded_at timestamp(6) with time zone not null,
    constraint container_stay_kind check (kind in ('ground', 'nursery', 'training', 'show')),
    constraint container_stay_litres check (litres > 0 and litres <= 5000)
);

create index container_stay_of_tree on container_stay (tree_id, since);

create sequence work_done_seq increment by 50;

create table work_done (
    id bigint primary key,
    tree_id bigint not null references tree (id),
    technique varchar(60) not null,
    done_on date not null,
    stress double precision not null,
    recovery_days integer not null,
    foliage_share double precision not null,
    root_share double precision not null,
    clock varchar(40),
    by_id bigint not null references person (id),
    recorded_at timestamp(6) with time zone not null,
    note varchar(2000),
    constraint work_done_stress check (stress between 0 and 10),
    constraint work_done_recovery check (recovery_days >= 0),
    constraint work_done_shares
        check (foliage_share between 0 and 1 and root_share between 0 and 1)
);

create index work_done_of_tree on work_done (tree_id, done_on);
