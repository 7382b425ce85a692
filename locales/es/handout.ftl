# The patient's handout: opened stages only, in plain words.
#
# $side      left or right
# $from, $until, $date   dates as text, as the language writes them
# Degrees come with a word for what they look like ($landmark).

handout-title = Su plan tras la operación
handout-side = { $side ->
    [left] Brazo IZQUIERDO
    [right] Brazo DERECHO
   *[other] (lado no conocido)
}
handout-surgery = Día de la operación: { $date }
handout-running-head = Su plan tras la operación del hombro
handout-page = Página { "{" }page{ "}" } de { "{" }pages{ "}" }
handout-name = Nombre
handout-birth = Fecha de nacimiento
handout-not-yet-signed = Su cirujano todavía tiene que responder a una pregunta. Hasta entonces, use solo la hoja de sus primeros días en casa.
handout-not-signed = Este plan vale solo cuando su cirujano lo ha firmado.
handout-signature = Cirujano
handout-signature-date = Fecha
handout-foot = Día { $day } · Noche { $night } · Peligro: número de emergencias
handout-care = Use este plan solo mientras le atiende su cirujano. Lo que le dice su cirujano va primero. Este papel no puede pedir ayuda. Tiene que llamar usted.

## What is open now.

handout-stage-protection = Dejar que sane
handout-stage-passive = Otro mueve el brazo
handout-stage-assisted = El brazo ayuda
handout-stage-active = Usted mueve el brazo con su propia fuerza
handout-stage-strengthening = El brazo gana fuerza
handout-stage-return = De vuelta al trabajo y al deporte
handout-stage-motion = Empezar a moverlo
handout-stage-loading = El brazo gana fuerza
handout-stage-other = El próximo paso

handout-step = Paso { $number }: { $title }
handout-now = Abierto desde el { $from }.
handout-later = No empiece esto antes del { $from }.
handout-now-frozen = Estas son sus reglas desde el { $from } en adelante.
handout-next-opened = Su próximo paso empieza el { $date }. No haga nada de ese paso antes de ese día.
handout-later-paper = Estos pasos también están abiertos. Cada uno tiene su propia hoja:
handout-later-step = { $step }, desde el { $from }
handout-later-go-on = Recibirá la hoja nueva antes del { $date }. Si no la tiene ese día, siga con esta y llámenos.
handout-later-step-back = { $step }, otra vez desde el { $from }
handout-later-stricter = Desde el { $date } sus reglas son más estrictas. No use esta hoja desde ese día. Si no tiene la hoja nueva, póngase el cabestrillo, no haga ejercicios y llámenos.
handout-back-title = Desde el { $date } sus reglas son más estrictas.
handout-back-own-strength = Deje de levantar el brazo con su propia fuerza.
handout-back-bands = Deje de usar bandas y pesas para el hombro.
handout-back-holding = Sostenga y cargue menos con esa mano, o nada, como dicen sus reglas nuevas.
handout-back-sling-always = Lleve otra vez el cabestrillo día y noche.
handout-back-sling-again = Lleve otra vez el cabestrillo, como dicen sus reglas nuevas.
handout-back-step = Sus reglas nuevas están en “{ $step }”.
handout-back-earlier = Puede hacerlo antes.
handout-back-from = Siga estas reglas desde el { $from } a más tardar. Puede empezar antes.
handout-after = Mientras no lo diga, siguen estas reglas, también después de ese día.
handout-frozen = Su próximo paso todavía no está abierto. Estas reglas valen hasta que la consulta de su cirujano le diga que siga.
handout-next = Próximo paso: no antes del { $date }, y solo cuando la consulta de su cirujano lo diga.
handout-last = Este es el último paso de su plan.
handout-not-listed = ¿Algo no está en este plan? Entonces no lo haga todavía. Llame y pregunte.
handout-hand-height = { $landmark ->
    [top-of-head] De pie y sin zapatos, deje la mano a menos de { $centimeters } cm ({ $inches } pulgadas) del suelo: más o menos a la altura de lo alto de su cabeza. ¿Ese punto está más bajo en usted? Entonces vale ese punto.
    [eyes] De pie y sin zapatos, deje la mano a menos de { $centimeters } cm ({ $inches } pulgadas) del suelo: más o menos a la altura de sus ojos. ¿Ese punto está más bajo en usted? Entonces vale ese punto.
    [chin] De pie y sin zapatos, deje la mano a menos de { $centimeters } cm ({ $inches } pulgadas) del suelo: más o menos a la altura de su barbilla. ¿Ese punto está más bajo en usted? Entonces vale ese punto.
    [shoulder] De pie y sin zapatos, deje la mano a menos de { $centimeters } cm ({ $inches } pulgadas) del suelo: más o menos a la altura de su hombro. ¿Ese punto está más bajo en usted? Entonces vale ese punto.
    [chest] De pie y sin zapatos, deje la mano a menos de { $centimeters } cm ({ $inches } pulgadas) del suelo: más o menos a la altura de su pecho. ¿Ese punto está más bajo en usted? Entonces vale ese punto.
    [half-chest] De pie y sin zapatos, deje la mano a menos de { $centimeters } cm ({ $inches } pulgadas) del suelo: más o menos a la altura del punto medio entre su ombligo y su pecho. ¿Ese punto está más bajo en usted? Entonces vale ese punto.
    [belly-button] De pie y sin zapatos, deje la mano a menos de { $centimeters } cm ({ $inches } pulgadas) del suelo: más o menos a la altura de su ombligo. ¿Ese punto está más bajo en usted? Entonces vale ese punto.
    [hip] De pie y sin zapatos, deje la mano a menos de { $centimeters } cm ({ $inches } pulgadas) del suelo: más o menos a la altura de su cadera. ¿Ese punto está más bajo en usted? Entonces vale ese punto.
   *[thigh] De pie y sin zapatos, deje la mano a menos de { $centimeters } cm ({ $inches } pulgadas) del suelo: más o menos a la altura de lo alto del muslo. ¿Ese punto está más bajo en usted? Entonces vale ese punto.
}
handout-no-pain = No tener dolor no quiere decir que ya esté sano. Las reglas siguen igual.
handout-stricter = ¿Su terapeuta dice otra cosa? Haga lo más prudente y llámenos.
handout-moved = Su cirujano ha cambiado las fechas de su plan. Tire los planes viejos.

## The sling.

handout-sling-title = Su cabestrillo
handout-sling-always = Lleve el cabestrillo día y noche, también al dormir. Quíteselo solo para lavarse, para vestirse y para hacer sus ejercicios.
handout-sling-weaning = Ahora lleve el cabestrillo un poco menos cada día. Empiece con una hora sin él. Déjeselo puesto entre mucha gente, en el autobús y al dormir. Hágalo así hasta el día de dejarlo.
handout-sling-none = Ya no necesita el cabestrillo.
handout-sling-numb = Primero, déjeselo puesto hasta que pueda sentir y mover todo el brazo.
handout-sling-same = Quíteselo y póngaselo como en el paso { $step }.
handout-sling-off-title = Para quitárselo
handout-sling-on-title = Para ponérselo
handout-sling-no-pillow = ¿Su cabestrillo no tiene almohada? Entonces deje descansar el antebrazo sobre el vientre y pregúntenos.
handout-sling-from = Desde el { $date }: { $text }
handout-sling-bar = Su cabestrillo
handout-sling-bar-always = día y noche
handout-sling-bar-always-on = día y noche, y sigue después
handout-sling-bar-weaning = menos cada día
handout-sling-bar-weaning-on = menos cada día, y sigue después
handout-sling-bar-none = sin cabestrillo
handout-sling-bar-week = Semana
handout-sling-bar-alt = Una línea de semanas desde el día de la operación. { $text }

## May and may not.

handout-rules-from = Desde el { $date } esto cambia
handout-may-title = Puede
handout-not-title = No haga
handout-not-more-title = No haga (nuevo)
handout-may-more-title = Puede (nuevo)

handout-may-raise = { $mode ->
    [carried] Deje que { handout-who-raises } suba el brazo operado. El brazo operado no trabaja. { handout-how-high }
    [helped] El brazo operado puede ayudar un poco mientras { handout-who-helps } lo sube{ $lying ->
        [yes] , pero solo cuando usted está boca arriba
       *[no] {""}
    }. { handout-how-high }
   *[alone] Suba el brazo con su propia fuerza. { handout-how-high }
}
# Where the other arm can't help, somebody else has to. Subjects of a verb in the singular.
handout-who = { $other ->
    [helps] el otro brazo o un terapeuta
   *[rests] un terapeuta
}
handout-who-raises = { $other ->
    [helps] el otro brazo, una mesa o un terapeuta
   *[rests] una mesa o un terapeuta
}
handout-who-helps = { $other ->
    [helps] el otro brazo
   *[rests] un terapeuta
}
handout-how-high = { $bound ->
    [free] Llegue hasta donde sea fácil.
   *[degrees] { $landmark ->
        [top-of-head] Deje el codo estirado y no suba la mano ni el codo por encima de lo alto de su cabeza ({ $degrees }°).
        [eyes] Deje el codo estirado y no suba la mano ni el codo por encima de sus ojos ({ $degrees }°).
        [chin] Deje el codo estirado y no suba la mano ni el codo por encima de su barbilla ({ $degrees }°).
        [shoulder] Deje el codo estirado y no suba la mano ni el codo por encima de su hombro ({ $degrees }°).
        [chest] Deje el codo estirado y no suba la mano ni el codo por encima de su pecho ({ $degrees }°).
        [half-chest] Deje el codo estirado y no suba la mano ni el codo por encima del punto medio entre su ombligo y su pecho ({ $degrees }°).
        [belly-button] Deje el codo estirado y no suba la mano ni el codo por encima de su ombligo ({ $degrees }°).
        [hip] Deje el codo estirado y no suba la mano ni el codo por encima de su cadera ({ $degrees }°).
        [thigh] Deje el codo estirado y no suba la mano ni el codo por encima de lo alto del muslo ({ $degrees }°).
       *[low] Llegue solo hasta donde le mostraron ({ $degrees }°).
    }
}
handout-how-high-else = Esto vale de pie o con la espalda recta. En el cabestrillo la mano puede descansar en el vientre. Si está boca arriba o se inclina hacia delante, guíese por lo que dice «Final».
handout-may-raise-ahead = { $mode ->
    [carried] Deje que { handout-who-raises } suba el brazo operado justo hacia delante. El brazo operado no trabaja. { handout-how-high }
    [helped] El brazo operado puede ayudar un poco mientras { handout-who-helps } lo sube justo hacia delante{ $lying ->
        [yes] , pero solo cuando usted está boca arriba
       *[no] {""}
    }. { handout-how-high }
   *[alone] Suba el brazo justo hacia delante con su propia fuerza. { handout-how-high }
}
handout-may-raise-out = { $mode ->
    [carried] Deje que { handout-who-raises } suba el brazo operado a medio camino entre delante y el lado. El brazo operado no trabaja. { handout-how-high }
    [helped] El brazo operado puede ayudar un poco mientras { handout-who-helps } lo sube a medio camino entre delante y el lado{ $lying ->
        [yes] , pero solo cuando usted está boca arriba
       *[no] {""}
    }. { handout-how-high }
   *[alone] Suba el brazo con su propia fuerza, a medio camino entre delante y el lado. { handout-how-high }
}
handout-may-turn-out = { $mode ->
    [carried] Deje que { handout-who } gire el brazo operado hacia fuera. El codo queda pegado al cuerpo. El brazo operado no trabaja. { handout-how-far-out }
    [helped] El brazo operado puede ayudar un poco mientras { handout-who-helps } lo gira hacia fuera{ $lying ->
        [yes] , pero solo cuando usted está boca arriba
       *[no] {""}
    }. { handout-how-far-out }
   *[alone] Gire el brazo hacia fuera con su propia fuerza. El codo queda pegado al cuerpo. { handout-how-far-out }
}
handout-how-far-out = { $bound ->
    [free] Llegue hasta donde sea fácil.
   *[degrees] { $landmark ->
        [to-the-side] Pare cuando la mano apunte recto hacia el lado ({ $degrees }°).
        [two-thirds] Pare a dos tercios del camino entre delante y el lado ({ $degrees }°).
        [half] Pare a medio camino entre delante y el lado ({ $degrees }°).
        [a-third] Pare a un tercio del camino entre delante y el lado ({ $degrees }°).
        [a-fifth] Pare a un quinto del camino entre delante y el lado ({ $degrees }°).
        [a-sixth] Pare a un sexto del camino entre delante y el lado ({ $degrees }°).
        [a-little] Pare cuando la mano apunte un poco hacia fuera ({ $degrees }°).
        [ahead] Pare cuando la mano apunte recto hacia delante ({ $degrees }°).
       *[across] Pare antes de que la mano apunte recto hacia delante ({ $degrees }°).
    }
}
handout-may-side = { $mode ->
    [carried] Deje que { handout-who } lleve el brazo operado hacia el lado. El brazo operado no trabaja. { handout-how-high }
    [helped] El brazo operado puede ayudar un poco mientras { handout-who-helps } lo lleva hacia el lado. { handout-how-high }
   *[alone] Lleve el brazo hacia el lado con su propia fuerza. { handout-how-high }
}
handout-may-across = { $mode ->
    [carried] Deje que { handout-who } cruce el brazo operado sobre el pecho. El brazo operado no trabaja. { handout-how-far }
    [helped] El brazo operado puede ayudar un poco mientras { handout-who-helps } lo cruza sobre el pecho. { handout-how-far }
   *[alone] Cruce el brazo sobre el pecho con su propia fuerza. { handout-how-far }
}
handout-may-turn-in = { $mode ->
    [carried] Deje que { handout-who } gire el brazo operado hacia el vientre. El brazo operado no trabaja. { handout-how-far }
    [helped] El brazo operado puede ayudar un poco mientras { handout-who-helps } lo gira hacia dentro. { handout-how-far }
   *[alone] Gire el brazo hacia dentro con su propia fuerza. { handout-how-far }
}
handout-may-back = { $mode ->
    [carried] Deje que { handout-who } lleve el brazo operado hacia atrás. El brazo operado no trabaja. { handout-how-far }
    [helped] El brazo operado puede ayudar un poco mientras { handout-who-helps } lo lleva hacia atrás. { handout-how-far }
   *[alone] Lleve el brazo hacia atrás con su propia fuerza. { handout-how-far }
}
handout-may-behind-back = { $mode ->
    [carried] Deje que { handout-who } lleve la mano operada detrás de la espalda. El brazo operado no trabaja.
    [helped] El brazo operado puede ayudar un poco mientras { handout-who-helps } lo lleva detrás de la espalda.
   *[alone] Ponga la mano detrás de la espalda con su propia fuerza, hasta donde sea fácil.
}
handout-may-behind-head = { $mode ->
    [carried] Deje que { handout-who } suba la mano operada junto a la cabeza. El brazo operado no trabaja.
    [helped] El brazo operado puede ayudar un poco mientras { handout-who-helps } lo sube junto a la cabeza.
   *[alone] Ponga la mano detrás de la cabeza, hasta donde sea fácil.
}
handout-how-far = { $bound ->
    [free] Llegue hasta donde sea fácil.
   *[degrees] Llegue solo hasta donde le mostraron ({ $degrees }°).
}
handout-may-all-ways = Suba, gire y estire el brazo con su propia fuerza. Llegue hasta donde sea fácil.
handout-may-stretch = Ya puede estirar suave hasta el final de un movimiento, como dicen sus ejercicios.
handout-may-bands = Entrene el hombro con bandas y pesas, como dicen sus ejercicios.
handout-may-press = { $effort ->
    [quarter] Presione leve con la mano. No deje que nada se mueva. El codo queda pegado al cuerpo. No use más de un cuarto de su fuerza (límite { $percent } %).
   *[percent] Presione muy leve con la mano (límite { $percent } % de su fuerza). No deje que nada se mueva. El codo queda pegado al cuerpo.
}
handout-may-hold = { $bound ->
    [free] Sostenga y lleve cosas con esa mano.
   *[load] Sostenga o lleve hasta { $kilograms } kg ({ $pounds } lb) con esa mano.
}
handout-may-overhead = { $bound ->
    [free] Levante cosas por encima del hombro.
   *[load] Levante hasta { $kilograms } kg ({ $pounds } lb) por encima del hombro.
}
handout-may-lean = Apóyese en el brazo y empújese con él.
handout-may-arm-below = Mueva los dedos, la muñeca y el codo, y gire la palma arriba y abajo.
handout-may-hand = Mueva los dedos y la muñeca.
handout-may-elbow = Doble y estire el codo.
handout-may-elbow-carried = Deje que { handout-who } doble y estire el codo operado. El brazo operado no trabaja.
handout-may-palm = Gire la palma arriba y abajo.
handout-may-blade = Encoja los hombros y junte los omóplatos, mientras el brazo descansa.

handout-not-shoulder = No mueva el hombro. No levante el brazo ni lo estire para alcanzar cosas. No lo lleve detrás de la espalda. No deje que nadie lo mueva.
handout-not-raise = No suba el brazo. No deje que nadie lo suba.
handout-not-turn-out = No gire el brazo hacia fuera. No deje que nadie lo gire.
handout-not-own-strength = No suba el brazo ni lo gire hacia fuera con su propia fuerza.
handout-not-raise-alone = No suba el brazo con su propia fuerza.
handout-not-raise-ahead = No suba el brazo justo hacia delante. No deje que nadie lo suba así.
handout-not-raise-ahead-alone = No suba el brazo justo hacia delante con su propia fuerza.
handout-not-raise-out = No suba el brazo por la línea a medio camino entre delante y el lado. No deje que nadie lo suba así.
handout-not-raise-out-alone = No suba el brazo con su propia fuerza por la línea a medio camino entre delante y el lado.
handout-not-turn-out-alone = No gire el brazo hacia fuera con su propia fuerza.
handout-not-other-ways = No lleve el brazo justo hacia el lado, ni al otro lado del pecho, ni hacia atrás.
handout-not-side = No lleve el brazo justo hacia el lado.
handout-not-side-alone = No lleve el brazo justo hacia el lado con su propia fuerza.
handout-not-across = No cruce el brazo sobre el pecho.
handout-not-across-alone = No cruce el brazo sobre el pecho con su propia fuerza.
handout-not-turn-in = No gire el brazo hacia dentro.
handout-not-turn-in-alone = No gire el brazo hacia dentro con su propia fuerza.
handout-not-back = Mantenga el codo delante de usted. No lo lleve detrás del cuerpo.
handout-not-back-alone = No empuje el brazo hacia atrás con su propia fuerza.
handout-not-behind-back = No ponga la mano detrás de la espalda.
handout-not-behind-back-alone = No ponga la mano detrás de la espalda con su propia fuerza.
handout-not-behind-head = No ponga la mano detrás de la cabeza.
handout-not-behind-head-alone = No ponga la mano detrás de la cabeza con su propia fuerza.
handout-not-stretch = No estire ni fuerce el hombro hasta el final.
handout-not-bands = No use bandas ni pesas para el hombro.
handout-not-hold = No sostenga ni lleve cosas con esa mano. Un lápiz o el teléfono están bien mientras el brazo descansa.
handout-not-overhead = No levante cosas por encima del hombro.
handout-not-lean = No se apoye en ese brazo. No se empuje con él para levantarse de la silla o de la cama.
handout-not-elbow-alone = No doble el codo con su propia fuerza.
handout-not-elbow-straight = No empuje el codo para estirarlo.
handout-not-palm-alone = No gire la palma hacia arriba con su propia fuerza.
handout-not-blade = No encoja los hombros y no lleve los omóplatos hacia atrás.

## Exercises.

handout-exercises-title = Sus ejercicios
handout-exercises-how = Vaya despacio y respire. Una molestia o un tirón suave están bien. Un dolor agudo no: pare. ¿Duele más de { $pain_minutes } minutos después? Entonces haga menos la próxima vez.
handout-exercises-missed = ¿Se saltó un día? No haga el doble. Siga como si fuera un día nuevo.
handout-exercises-sling = Algunos movimientos se hacen sin el cabestrillo. Póngaselo otra vez después.
handout-exercises-numb = ¿Sigue dormido el brazo? No empiece todavía. Déjelo en el cabestrillo.
handout-exercises-home = En casa, pare donde indica «Final». Es un poco menos que la regla.
handout-exercises-none = En este paso no hay ejercicios.
handout-exercise-same = Ya conoce este movimiento: número { $number } del paso { $step }. Hágalo igual.
handout-exercise-again = Ya conoce este movimiento: número { $number } del paso { $step }. Hágalo igual. Lo que vale ahora:
handout-exercise-again-here = Ya conoce este movimiento: número { $number } de arriba. Hágalo igual. Lo que vale ahora:
handout-exercise-start = Inicio
handout-exercise-end = Final
handout-exercise-stop = Pare
handout-exercise-mistakes = Cuidado con
handout-exercise-dates = Empiece el { $from }. Déjelo el { $until }.
handout-exercise-from = Empiece el { $from }.
handout-exercise-until = Déjelo el { $until }.

handout-reach-lying-raise = { $landmark ->
    [top-of-head] Pare cuando el brazo pase un poco de apuntar al techo ({ $degrees }°).
    [eyes] Pare cuando el brazo pase un poco de apuntar al techo ({ $degrees }°).
    [chin] Pare cuando el brazo pase un poco de apuntar al techo ({ $degrees }°).
    [shoulder] Pare cuando el brazo apunte recto al techo ({ $degrees }°).
    [chest] Pare antes de que el brazo apunte recto al techo ({ $degrees }°).
    [half-chest] Pare cuando el brazo apunte casi recto al techo ({ $degrees }°).
    [belly-button] Pare a dos tercios del camino hacia el techo ({ $degrees }°).
    [hip] Pare a medio camino hacia el techo ({ $degrees }°).
    [thigh] Pare a un tercio del camino hacia el techo ({ $degrees }°).
   *[low] Llegue solo hasta donde le mostraron ({ $degrees }°).
}
handout-reach-corner = { $landmark ->
    [shoulder] Pare cuando la parte alta del brazo y el pecho formen una esquina recta ({ $degrees }°).
    [chest] Pare antes de que la parte alta del brazo y el pecho formen una esquina recta ({ $degrees }°).
    [half-chest] Pare bastante antes de que la parte alta del brazo y el pecho formen una esquina recta: a tres cuartos del camino ({ $degrees }°).
    [belly-button] Pare bastante antes de que la parte alta del brazo y el pecho formen una esquina recta: a dos tercios del camino ({ $degrees }°).
    [hip] Pare bastante antes de que la parte alta del brazo y el pecho formen una esquina recta: a medio camino ({ $degrees }°).
    [thigh] Pare bastante antes de que la parte alta del brazo y el pecho formen una esquina recta: a un tercio del camino ({ $degrees }°).
   *[other] Llegue solo hasta donde le mostraron ({ $degrees }°).
}
handout-reach-lying-turn = { $landmark ->
    [to-the-side] La mano apunta al techo. Deje que caiga hacia fuera como de las 12 a las 3 en un reloj ({ $degrees }°).
    [two-thirds] La mano apunta al techo. Deje que caiga hacia fuera como de las 12 a las 2 en un reloj ({ $degrees }°).
    [half] La mano apunta al techo. Deje que caiga hacia fuera como de las 12 a la 1 y media en un reloj ({ $degrees }°).
    [a-third] La mano apunta al techo. Deje que caiga hacia fuera como de las 12 a la 1 en un reloj ({ $degrees }°).
    [a-fifth] La mano apunta al techo. Deje que caiga hacia fuera apenas más que de las 12 a las 12 y media en un reloj ({ $degrees }°).
    [a-sixth] La mano apunta al techo. Deje que caiga un poco hacia fuera, como de las 12 a las 12 y media en un reloj ({ $degrees }°).
    [a-little] La mano apunta al techo. Deje que caiga un poco hacia fuera, menos que de las 12 a las 12 y media en un reloj ({ $degrees }°).
    [ahead] Pare cuando la mano apunte al techo ({ $degrees }°).
   *[across] Pare antes de que la mano apunte al techo ({ $degrees }°).
}
handout-reach-upright-raise = { handout-how-high }
handout-reach-turn-out = { handout-how-far-out }
handout-reach-shown = Llegue solo hasta donde le mostraron ({ $degrees }°).
handout-reach-easy = Llegue hasta donde sea fácil, y no más.

handout-dose-times = { $counted ->
    [times] { $to ->
        [none] Hágalo { $repetitions } veces.
       *[more] Hágalo { $repetitions } veces. Con el tiempo, suba hasta { $to }.
    }
   *[other] { $to ->
        [none] Haga { $repetitions } { $counted }.
       *[more] Haga { $repetitions } { $counted }. Con el tiempo, suba hasta { $to }.
    }
}
handout-dose-sets = Haga { $sets } series, con un descanso entre ellas.
handout-dose-hold = Aguante { $seconds } segundos cada vez.
handout-dose-day = { $times ->
    [1] Hágalo una vez al día.
    [2] Hágalo dos veces al día.
   *[other] Hágalo { $times } veces al día.
}
handout-dose-week = { $times ->
    [1] Hágalo una vez al día, { $days } días a la semana.
    [2] Hágalo dos veces al día, { $days } días a la semana.
   *[other] Hágalo { $times } veces al día, { $days } días a la semana.
}
handout-dose-load = No use más de { $kilograms } kg ({ $pounds } lb).
handout-dose-therapist = Solo con su terapeuta.

## May I …?

handout-activities-title = ¿Puedo …?
handout-activities-intro = Estas respuestas valen para este paso.
handout-activities-changed = Aquí está lo que cambia en este paso. Todo lo demás sigue como en el paso { $step }.
handout-activities-same = Nada cambia: valen las respuestas del paso { $step }.
handout-activities-yes = Sí
handout-activities-from = Desde el { $date }
handout-activities-ask = Pregúntenos antes
handout-activities-what = Qué
handout-activities-answer = ¿Puedo?
handout-activities-not-title = Todavía no
handout-activities-not = Esto tiene que esperar. Use la otra mano o deje que alguien le ayude.
handout-activities-not-rest = Todo lo demás también espera: levantar cosas, trabajo pesado y deporte.

## When to call, and visits.

handout-call-title = Cuándo llamar
handout-today-numb = La mano o el brazo está dormido, hormiguea o está débil, y no se pasa.
handout-visits-title = Sus visitas
handout-visits-none = Pregunte su próxima visita en la consulta de su cirujano.
handout-visit-wound = { $date }: miramos su herida.
handout-visit-gate = { $date }: miramos su brazo, y su cirujano le dice si puede seguir.
handout-visit-other = { $date }: visita.
handout-visits-bring = Traiga este plan y sus pastillas. Son días que planeamos para usted. Llame si alguno no le va bien.

handout-nights-title = Sus primeros días y noches
handout-nights-intro = Esta parte es para los días justo después de la operación.
handout-alone-title = Sin ayuda, con una mano
handout-alone-bed = Antes de acostarse, ponga agua, el teléfono, sus pastillas y este plan del lado de su otro brazo.
handout-alone-rise = Para levantarse, deslícese hasta el borde. Empújese con la otra mano. Siéntese y espere un minuto. Luego póngase de pie.
handout-alone-stairs = En la escalera, agárrese al pasamanos con la otra mano. ¿No hay pasamanos de ese lado? Siéntese y pida ayuda.
handout-alone-toilet = Ponga el papel higiénico del lado de su otro brazo y use la otra mano.
handout-alone-kitchen = Sujete un frasco entre las rodillas y gire la tapa con la otra mano. No levante ollas calientes.
handout-alone-shoes = Use zapatos que se ponen sin atar y que sujetan el talón.
handout-tablets-own = Su cirujano anotó: { $tablets }

## The sheet for the fridge.

handout-fridge-pictures = Lo mismo en dibujos
handout-fridge-stop = Pare si un movimiento le duele mucho, y no pase de la barra. Después llámenos.
handout-fridge-title = Para la nevera: { handout-side }
handout-fridge-valid = Vale desde el { $from } hasta que la consulta de su cirujano abra el próximo paso. Eso no será antes del { $until }.
handout-fridge-limits-title = Las reglas más importantes
handout-fridge-until = Vale desde el { $from } hasta el { $last } (último día).
handout-fridge-from = Vale desde el { $from }.
handout-fridge-back = Use esta hoja solo hasta el { $last }. Desde el { $next } use la hoja “{ $step }”.
handout-fridge-open-end = Vale desde el { $from } en adelante
handout-fridge-copy = Copie esta página para cada semana nueva. Semana del: ________
handout-fridge-corner = Ejercicio
handout-fridge-week = Semana del: ________
handout-fridge-tick = Marque una casilla cada vez. La casilla que se saltó queda vacía.
handout-fridge-tick-day = Marque la casilla cuando ese día haya hecho un movimiento tantas veces como dice. La casilla que se saltó queda vacía.
handout-fridge-alt = Una tabla para marcar: ejercicios en filas, los días de una semana en columnas.
handout-fridge-end = Final: { $end }
handout-fridge-dose = { $times ->
    [1] una vez al día
   *[other] { $times } veces al día
}
handout-fridge-dose-week = { $times ->
    [1] una vez al día, { $days } días a la semana
   *[other] { $times } veces al día, { $days } días a la semana
}
