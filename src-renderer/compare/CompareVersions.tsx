import { useMemo, useState } from 'react';
import { setField } from '../../src-core/edit';
import type { Piece } from '../../src-core/job';
import { ChoiceField } from '../forms/fields/ChoiceField';
import { LengthField } from '../forms/fields/LengthField';
import { Button } from '../look/Button';
import { Heading } from '../look/Heading';
import { densityOf, pieceFacts } from '../pieces/piece-facts';
import { useJob, useStore } from '../state/store-context';
import { useVerdict } from '../state/verdict-store';
import { CompareTable } from './CompareTable';
import styles from './CompareVersions.module.css';
import { FINISH_CHOICES, PROFILE_CHOICES, versionWords, weightDifference } from './compare-rows';
import type { Choices, ProfileKind } from './instead';
import { choose, drawnProfile, insteadArgs, insteadJob, insteadOf, isAsDrawn } from './instead';
import { PigmentField } from './PigmentField';
import { useAside } from './useAside';

interface Props {
  readonly piece: Piece;
}

/** One piece as drawn and instead; what is chosen touches the drawing only once it is used. */
export function CompareVersions({ piece }: Props) {
  const store = useStore();
  const job = useJob();
  const system = job.shownIn;
  const [choices, setChoices] = useState<Choices>({});
  const isSame = isAsDrawn(choices);
  const other = useMemo(
    () => (isSame ? null : insteadJob(job, piece, choices)),
    [isSame, job, piece, choices],
  );
  const aside = useAside(other?.ok === true ? other.job : null, piece.id);
  const shown = useVerdict(piece.id);

  const densityPcf = densityOf(job, piece);
  const result = shown?.result ?? null;
  const drawn = { piece, facts: useMemo(() => pieceFacts(piece, densityPcf), [piece, densityPcf]), result };
  const changed = useMemo(() => insteadOf(piece, choices), [piece, choices]);
  const instead = {
    piece: changed,
    facts: useMemo(() => pieceFacts(changed, densityPcf), [changed, densityPcf]),
    result: isSame ? result : aside.result,
  };

  const take = (next: Choices): string | null => {
    const chosen = choose(piece, choices, next);
    const tried = insteadJob(job, piece, chosen);
    if (!tried.ok) return tried.sentences[0] ?? 'That cannot be built.';
    setChoices(chosen);
    return null;
  };
  const use = () => {
    const [problem] = store.getState().run(setField, insteadArgs(job, piece, choices));
    if (problem !== undefined) {
      store.getState().say({ tone: 'trouble', sentence: problem.sentence });
      return;
    }
    setChoices({});
    store.getState().say({
      tone: 'plain',
      sentence: `Done: ${piece.name} is now the other version. Undo brings it back.`,
    });
  };
  const trouble = other?.ok === false ? other.sentences : [];

  return (
    <div className={styles.panel}>
      <header className={styles.head}>
        <h2 className={styles.name}>{piece.name}</h2>
        <p className={styles.help}>
          Choose what it could be instead. The drawing stays as it is until you use the other version.
        </p>
      </header>
      <section aria-labelledby="instead-heading">
        <Heading id="instead-heading">Instead</Heading>
        <LengthField
          label="Thickness"
          valueIn={changed.thicknessIn}
          system={system}
          onCommit={(thicknessIn) => take({ thicknessIn })}
        />
        <ChoiceField
          label="Profile of its free edges"
          value={PROFILE_CHOICES.find(({ value }) => value === drawnProfile(changed))?.value ?? null}
          choices={PROFILE_CHOICES}
          noneWords="as drawn"
          onCommit={(profile: ProfileKind) => take({ profile })}
        />
        <ChoiceField
          label="Finish"
          value={changed.finish}
          choices={FINISH_CHOICES}
          onCommit={(finish: Piece['finish']) => take({ finish })}
        />
        <PigmentField colour={changed.colour} onCommit={(colour) => take({ colour })} />
        {trouble.map((sentence) => (
          <p key={sentence} className={styles.trouble} role="alert">
            {sentence}
          </p>
        ))}
      </section>
      <section aria-label="Side by side">
        <CompareTable drawn={drawn} instead={instead} system={system} />
        <p className={styles.state} role="status">
          {versionWords(aside.state, shown)}
        </p>
        {!isSame && <p className={styles.cost}>{weightDifference(drawn, instead, system)}</p>}
        {choices.thicknessIn !== undefined && (
          <p className={styles.help}>The soffit stays where it is, so the top moves.</p>
        )}
      </section>
      <div className={styles.actions}>
        <Button weight="main" isDisabled={other?.ok !== true} onPress={use}>
          Use it
        </Button>
        <Button isDisabled={isSame} onPress={() => setChoices({})}>
          Back to as drawn
        </Button>
      </div>
    </div>
  );
}
