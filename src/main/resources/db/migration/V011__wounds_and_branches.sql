-- What a reading can belong to besides the tree itself.
create sequence wound_seq increment by 50;

create table wound (
    id bigint primary key,
    tree_id bigint not null references tree (id),
    place varchar(120) not null,
    made_on date not null,
    first_width_mm double precision not null,
    first_length_mm double precision not null,
    height_mm double precision,
    bearing_degrees double precision,
    deadwood_by_design boolean not null,
    source varchar(20) not null,
    by_id bigint not null references person (id),
    recorded_at timestamp(6) with time zone not null,
    constraint wound_has_a_size
        check (first_width_mm between 1 and 500 and first_length_mm between 1 and 500),
    constraint wound_on_the_tree
        check (height_mm between 0 and 5000 and bearing_degrees between 0 and 360)
);

create index wound_of_tree on wound (tree_id, made_on);

create sequence branch_seq increment by 50;

create table branch (
    id bigint primary key,
    tree_id bigint not null references tree (id),
    name varchar(120) not null,
    role varchar(20) not null,
    height_mm double precision,
    bearing_degrees double precision,
    entered_on date not null,
    removed_on date,
    by_id bigint not null references person (id),
    recorded_at timestamp(6) with time zone not null,
    constraint branch_on_the_tree
        check (height_mm between 0 and 5000 and bearing_degrees between 0 and 360),
    constraint branch_lived check (removed_on >= entered_on)
);

create index branch_of_tree on branch (tree_id);
