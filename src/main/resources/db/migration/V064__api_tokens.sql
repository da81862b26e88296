-- Tokens by which a person's programs use the API. Of a token only the hash is kept; an ended one is
-- gone.
create sequence api_token_seq increment by 50;

create table api_token (
    id           bigint                      not null primary key,
    person_id    bigint                      not null references person (id),
    name         varchar(60)                 not null,
    scope        varchar(20)                 not null,
    secret_hash  varchar(64)                 not null,
    made_at      timestamp(6) with time zone not null,
    last_day     date                        not null,
    last_used_on date,
    constraint api_token_secret_once unique (secret_hash),
    constraint api_token_scope_known check (scope in ('READ', 'READ_AND_WRITE'))
);

create index api_token_of_person on api_token (person_id);
