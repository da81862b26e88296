-- The second factor of a sign-in: a secret shared with a person's app, sealed with a key that is not in
-- the database; on_since is empty until a first code showed that the app has it. A code's step of time
-- is kept, so that no code counts twice.
create table second_factor (
    person_id     bigint       not null primary key references person (id),
    sealed_secret varchar(200) not null,
    on_since      timestamp(6) with time zone,
    last_step     bigint       not null
);

-- The codes of a person's printed sheet, each good once, as hashes. By its first letter a code is found.
create sequence recovery_code_seq increment by 50;

create table recovery_code (
    id        bigint       not null primary key,
    person_id bigint       not null references person (id),
    letter    varchar(1)   not null,
    code_hash varchar(100) not null,
    used_at   timestamp(6) with time zone,
    constraint recovery_code_once unique (person_id, letter)
);

-- Sign-ins whose password was right and whose code is waited for. They are no sessions and open
-- nothing.
create sequence half_sign_in_seq increment by 50;

create table half_sign_in (
    id          bigint                      not null primary key,
    person_id   bigint                      not null references person (id),
    secret_hash varchar(64)                 not null,
    begun_at    timestamp(6) with time zone not null,
    constraint half_sign_in_secret_once unique (secret_hash)
);

create index half_sign_in_of_person on half_sign_in (person_id);
create index half_sign_in_by_age on half_sign_in (begun_at);
