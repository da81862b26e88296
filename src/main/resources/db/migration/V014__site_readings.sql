-- Temperatures read at a site, a minimum and a maximum a day, and which version of a site is seen.
alter table site add column version bigint default 0 not null;
alter table site add column readings_revision bigint default 0 not null;

create table site_reading (
    site_id bigint not null references site (id),
    read_on date not null,
    min_celsius double precision not null,
    max_celsius double precision not null,
    primary key (site_id, read_on),
    constraint site_reading_in_order check (min_celsius <= max_celsius)
);
