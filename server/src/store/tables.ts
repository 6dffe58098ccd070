/** Every primary key begins with the practice. Instants are epoch milliseconds, bodies are canonical JSON. */
export interface Tables {
  readonly event: {
    readonly practice_id: string;
    readonly person_id: string;
    readonly id: string;
    readonly position: number;
    readonly body: string;
    readonly hash: string;
  };
  /** The highest position given out; its row is the lock under which a person's records are added. */
  readonly person_position: {
    readonly practice_id: string;
    readonly person_id: string;
    readonly last: number;
  };
  readonly plan_revision: {
    readonly practice_id: string;
    readonly person_id: string;
    readonly id: string;
    readonly position: number;
    readonly body: string;
    readonly hash: string;
  };
  readonly document: {
    readonly practice_id: string;
    readonly kind: string;
    readonly id: string;
    readonly body: string;
    readonly hash: string;
  };
  readonly standing_rule: {
    readonly practice_id: string;
    readonly id: string;
    readonly version: number;
    readonly body: string;
  };
  readonly link: {
    readonly practice_id: string;
    readonly token_hash: string;
    readonly person_id: string;
    readonly expires_at: number;
    readonly taken_at: number | null;
    readonly device_hash: string | null;
  };
  readonly session: {
    readonly practice_id: string;
    readonly token_hash: string;
    readonly expires_at: number;
  };
}
