-- A tree that left the school. Its row tells since when, for as long as it is away; how it left, and what
-- was said of it, stays when it comes back.
alter table tree add column left_on date;

create sequence tree_departure_seq increment by 50;

create table tree_departure (
    id bigint primary key,
    tree_id bigint not null references tree (id),
    left_on date not null,
    how varchar(20) not null,
    note varchar(500),
    by_id bigint not null references person (id),
    recorded_at timestamp(6) with time zone not null,
    constraint tree_departure_known check (how in ('WITH_KEEPER', 'GIVEN_AWAY', 'DIED'))
);

create index tree_departure_of_tree on tree_departure (tree_id, id);
