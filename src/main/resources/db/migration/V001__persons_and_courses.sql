-- Who is at the school, what they are there, and which courses they teach or attend.

create sequence person_seq increment by 50;
create sequence course_seq increment by 50;
create sequence membership_seq increment by 50;

create table person (
    id            bigint       not null primary key,
    version       bigint       not null,
    name          varchar(120) not null,
    login         varchar(60)  not null,
    password_hash varchar(100) not null,
    active        boolean      not null,
    constraint person_login_once unique (login)
);

create table person_role (
    person_id bigint      not null references person (id),
    role      varchar(20) not null,
    primary key (person_id, role),
    constraint person_role_known check (role in ('STUDENT', 'INSTRUCTOR', 'REGISTRAR'))
);

create table course (
    id        bigint       not null primary key,
    version   bigint       not null,
    name      varchar(120) not null,
    starts_on date         not null,
    ends_on   date         not null,
    constraint course_ends_after_start check (ends_on >= starts_on)
);

create table membership (
    id        bigint      not null primary key,
    course_id bigint      not null references course (id),
    person_id bigint      not null references person (id),
    role      varchar(20) not null,
    constraint membership_once unique (course_id, person_id),
    constraint membership_role_known check (role in ('STUDENT', 'INSTRUCTOR'))
);

create index membership_of_person on membership (person_id, role);
