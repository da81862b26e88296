-- Wrong sign-ins of the last quarter of an hour, for every node to count, and the browsers a person
-- signed in from before. Names, addresses and secrets are kept as hashes only.
create sequence sign_in_failure_seq increment by 50;
create sequence known_browser_seq increment by 50;

create table sign_in_failure (
    id          bigint                      not null primary key,
    login_key   varchar(64)                 not null,
    address_key varchar(64)                 not null,
    failed_at   timestamp(6) with time zone not null
);

create index sign_in_failure_by_login on sign_in_failure (login_key, failed_at);
create index sign_in_failure_by_address on sign_in_failure (address_key, failed_at);
create index sign_in_failure_by_age on sign_in_failure (failed_at);

create table known_browser (
    id          bigint                      not null primary key,
    person_id   bigint                      not null references person (id),
    secret_hash varchar(64)                 not null,
    known_since timestamp(6) with time zone not null,
    constraint known_browser_secret_once unique (secret_hash)
);

create index known_browser_of_person on known_browser (person_id);
