import { createContext, type ReactNode, useCallback, useContext, useState } from "react";

const SpeakerContext = createContext<(what: string) => void>(() => {});

/** Tells people who do not look at the page what has happened. Every page speaks through one place. */
export function Speaker({ children }: { readonly children: ReactNode }) {
  const [told, setTold] = useState({ what: "", count: 0 });
  const say = useCallback((what: string) => setTold(({ count }) => ({ what, count: count + 1 })), []);
  return (
    <SpeakerContext value={say}>
      {children}
      <div className="unseen" role="status" aria-live="polite">
        {/* A new element each time, so that the same words said twice are read twice. */}
        <p key={told.count}>{told.what}</p>
      </div>
    </SpeakerContext>
  );
}

export function useSay(): (what: string) => void {
  return useContext(SpeakerContext);
}
