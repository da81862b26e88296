-- What the school is called: one row, whose name is empty until somebody gives it one.
create table school (
    id      int         not null primary key,
    version bigint      not null,
    name    varchar(80) not null
);

insert into school (id, version, name) values (1, 0, '');
