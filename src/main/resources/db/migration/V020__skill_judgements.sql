create sequence skill_judgement_seq increment by 50;

create table skill_judgement (
    id bigint primary key,
    student_id bigint not null references person (id),
    lesson varchar(60) not null,
    shown boolean not null,
    judged_on date not null,
    by_id bigint not null references person (id),
    note varchar(2000)
);

create index skill_judgement_of_student on skill_judgement (student_id, lesson);
