-- Where trees stand, the trees, and who kept them since when.
create sequence site_seq increment by 50;

create table site (
    id bigint primary key,
    name varchar(120) not null,
    latitude double precision not null,
    longitude double precision not null,
    zone varchar(60) not null,
    constraint site_on_the_globe
        check (latitude between -90 and 90 and longitude between -180 and 180)
);

create table site_month (
    site_id bigint not null references site (id),
    month_no integer not null,
    mean_minimum_celsius double precision not null,
    mean_maximum_celsius double precision not null,
    primary key (site_id, month_no),
    constraint site_month_of_the_year check (month_no between 1 and 12),
    constraint site_month_in_order check (mean_minimum_celsius <= mean_maximum_celsius)
);

create sequence tree_seq increment by 50;

create table tree (
    id bigint primary key,
    version bigint not null,
    label varchar(120) not null,
    species varchar(60) not null,
    keeper_id bigint not null references person (id),
    site_id bigint not null references site (id),
    came_on date not null,
    origin varchar(500),
    note varchar(2000),
    by_id bigint not null references person (id),
    recorded_at timestamp(6) with time zone not null
);

create index tree_of_keeper on tree (keeper_id, label);
create index tree_of_site on tree (site_id);
create index tree_by_label on tree (label, id);

create sequence tree_keeping_seq increment by 50;

create table tree_keeping (
    id bigint primary key,
    tree_id bigint not null references tree (id),
    keeper_id bigint not null references person (id),
    since date not null,
    by_id bigint not null references person (id),
    recorded_at timestamp(6) with time zone not null
);

create index tree_keeping_of_tree on tree_keeping (tree_id, since);
create index tree_keeping_of_keeper on tree_keeping (keeper_id);
