-- One row that is written now and then, to find out whether anything can be: the service is ready only
-- while it can.
create table write_trial (
    id       int                         not null primary key,
    tried_at timestamp(6) with time zone not null
);

insert into write_trial (id, tried_at) values (1, timestamp '2026-11-30 00:00:00');
